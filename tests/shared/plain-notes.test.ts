import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainOf } from '#core/outing/plain-of.ts'
import { parseOutingFile } from '#shared/outing-file.ts'
import { notedDay, notes } from '#tests/kit/noted-outing.ts'
import { autumnDay, outingOfPlain, plainWith, settledWith } from '#tests/kit/plain-outing.ts'
import { holds } from '#tests/kit/property.ts'

const faultsOf = (change: object): string[] => {
  const parsed = parseOutingFile(JSON.stringify({ ...autumnDay, ...notedDay, ...change }))
  return parsed.ok ? [] : parsed.error.map(({ path, code }) => `${path}: ${code}`)
}

const holes = Array<null>(18).fill(null)

describe('what a plain file says beside scores', () => {
  it('is read as it is written', () => {
    expect(faultsOf({})).toEqual([])
  })

  it.each<[object, string[]]>([
    [{ concessions: [{ ...notes.concessions[0], game: 'skins' }] }, ['concessions[0].game: unknown game']],
    [{ concessions: [{ ...notes.concessions[0], ball: 'oak' }] }, ['concessions[0].ball: unknown ball']],
    [{ concessions: [{ ...notes.concessions[0], ball: 'pair' }] }, ['concessions[0].ball: not in the game']],
    [{ concessions: [{ ...notes.concessions[1], to: 'oak' }] }, ['concessions[0].to: unknown ball']],
    [{ concessions: [{ ...notes.concessions[1], hole: 19 }] }, ['concessions[0].hole: wrong value']],
    [{ concessions: [{ ...notes.concessions[1], what: 'putt' }] }, ['concessions[0].what: wrong value']],
    [{ concessions: [{ ...notes.concessions[0], score: 0 }] }, ['concessions[0].score: wrong value']],
    [{ concessions: [notes.concessions[3], notes.concessions[3]] }, ['concessions[1]: said twice']],
    [{ agreedHoles: [{ ...notes.agreedHoles[0], won: 'cedar' }] }, ['agreedHoles[0].won: not between these']],
    [{ agreedHoles: [{ ...notes.agreedHoles[0], group: 'two' }] }, ['agreedHoles[0].group: other group']],
    [{ agreedHoles: [{ ...notes.agreedHoles[0], group: 'six' }] }, ['agreedHoles[0].group: unknown group']],
    [
      { agreedHoles: [notes.agreedHoles[0], { ...notes.agreedHoles[0], between: ['birch', 'alder'], won: null }] },
      ['agreedHoles[1]: said twice'],
    ],
    [
      { agreedResults: [{ ...notes.agreedResults[0], between: ['alder', 'alder'], won: null }] },
      ['agreedResults[0].between[1]: said twice'],
    ],
    [{ agreedResults: [{ ...notes.agreedResults[0], left: 18 }] }, ['agreedResults[0].left: wrong value']],
    [{ presses: [{ ...notes.presses[0], by: 'oak' }] }, ['presses[0].by: unknown ball']],
    [{ holesOut: [{ hole: 4, counts: 'par' }] }, ['holesOut[0].counts: wrong value']],
    [{ holesOut: [notes.holesOut[0], notes.holesOut[0]] }, ['holesOut[1]: said twice']],
    [{ drives: [{ ball: 'pair', holes: ['alder', ...holes.slice(1)] }] }, ['drives[0].holes[0]: unknown player']],
    [{ drives: [{ ball: 'pair', holes: [] }] }, ['drives[0].holes: wrong number of holes']],
    [{ teeShots: [{ ...notes.teeShots[0], player: 'alder' }] }, ['teeShots[0].player: unknown player']],
    [{ teeShots: [notes.teeShots[0], notes.teeShots[0]] }, ['teeShots[1]: said twice']],
    [{ likelyScores: [{ ball: 'oak', holes }] }, ['likelyScores[0].ball: unknown ball']],
    [{ absences: [{ ball: 'rowan', joinedAt: [0, 1] }] }, ['absences[0].joinedAt[0]: wrong value']],
    [{ absences: [notes.absences[0], notes.absences[0]] }, ['absences[1]: said twice']],
    [{ markers: [{ ball: 'alder', marker: 'oak' }] }, ['markers[0].marker: unknown player']],
    [{ certified: [{ ball: 'oak', by: 'player' }] }, ['certified[0].ball: unknown ball']],
    [{ certified: [{ ball: 'alder', by: 'partner' }] }, ['certified[0].by: wrong value']],
    [{ rulings: [{ ...notes.rulings[1], games: ['skins'] }] }, ['rulings[0].games[0]: unknown game']],
    [{ rulings: [{ ...notes.rulings[1], ball: 'oak' }] }, ['rulings[0].ball: unknown ball']],
    [{ rulings: [notes.rulings[0], notes.rulings[0]] }, ['rulings[1].id: id twice']],
    [{ rulings: [{ ...notes.rulings[5], strokes: 12.5 }] }, ['rulings[0].strokes: wrong value']],
    [{ moved: [{ ball: 'oak', group: 'two', holes: [] }] }, ['moved[0].ball: unknown ball']],
    [{ moved: [{ ball: 'alder', group: 'six', holes: [] }] }, ['moved[0].group: unknown group']],
    [{ playingConditions: { strokes: 4 } }, ['playingConditions.strokes: wrong value']],
    [
      { groups: notedDay.groups.slice(0, 1), drives: [], teeShots: [], absences: [{ ball: 'pair', withdrawn: true }] },
      ['absences[0].ball: no group'],
    ],
    [
      { games: [{ ...autumnDay.games[0], group: 'two' }, autumnDay.games[1]], concessions: notes.concessions.slice(3) },
      [
        'concessions[0].game: other group',
        'agreedHoles[0].game: other group',
        'agreedHoles[1].game: other group',
      ].concat(['agreedResults[0].game: other group', 'presses[0].game: other group']),
    ],
  ])('names the field of a fault %#', (change, expected) => {
    expect(faultsOf(change)).toEqual(expected)
  })
})

describe('a file made of its outing', () => {
  const lists = fc.record({
    concessions: fc.subarray([...notes.concessions]),
    agreedHoles: fc.subarray([...notes.agreedHoles]),
    agreedResults: fc.subarray([...notes.agreedResults]),
    presses: fc.subarray([...notes.presses]),
    holesOut: fc.subarray([...notes.holesOut]),
    drives: fc.subarray([...notes.drives]),
    teeShots: fc.subarray([...notes.teeShots]),
    likelyScores: fc.subarray([...notes.likelyScores]),
    absences: fc.subarray([...notes.absences]),
    markers: fc.subarray([...notes.markers]),
    certified: fc.subarray([...notes.certified]),
    rulings: fc.subarray([...notes.rulings]),
    playingConditions: fc.constantFrom(notes.playingConditions, undefined),
    moved: fc.subarray([
      { ball: 'alder', group: 'two', holes: [[7, 1]] },
      {
        ball: 'cedar',
        group: 'two',
        holes: [
          [4, 1],
          [18, 1],
        ],
      },
    ]),
  })

  holds(
    'says the same beside scores, whatever of it there is',
    lists,
    said => {
      const outing = outingOfPlain(plainWith({ ...notedDay, ...said, scores: [] }))
      const again = plainOf(outing)
      expect(again && outingOfPlain(again).notes).toEqual(outing.notes)
      expect(again && [...outingOfPlain(again).balls]).toEqual([...outing.balls])
    },
    2_000,
  )

  it('has the same results and is a file without fault', () => {
    const again = plainOf(outingOfPlain(plainWith(notedDay)))
    expect(again === null ? 'no file' : settledWith({ ...again })).toEqual(settledWith(notedDay))
    expect(parseOutingFile(JSON.stringify(again))).toMatchObject({ ok: true })
  })
})
