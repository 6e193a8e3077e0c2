import { describe, expect, it } from 'vitest'
import { undoOf } from '#core/log/undo.ts'
import type { NewFact } from '#core/outing/acts.ts'
import {
  driveFacts,
  holeOutFacts,
  joinFacts,
  leaveFacts,
  likelyScoreFacts,
  markerFacts,
  noShowFacts,
  playingConditionsFacts,
  presentFacts,
  teeShotFacts,
  withdrawFacts,
} from '#core/outing/acts-ball.ts'
import { certifyFacts, rulingFacts, uncertifyFacts } from '#core/outing/acts-card.ts'
import { makeKey, scoreKey } from '#core/outing/keys.ts'
import type { BallId, PlayerId, RulingId } from '#core/values/ids.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { actAfter, alder, groupA, outingWith, startOp, stateWith } from '#tests/kit/two-groups.ts'

const at = { hole: 1, lap: 1 }
const oak = 'oak' as BallId

/** The outing after acts of somebody who has seen all before. */
function outingAfter(...acts: readonly (readonly NewFact[])[]) {
  const ops: ReturnType<typeof actAfter>[] = []
  for (const facts of acts) ops.push(actAfter(ops, 'fir', facts))
  return outingWith(ops)
}

const start = outingWith([])
const ruled = { games: null, rule: null, reason: null, kind: 'disqualified', ball: alder, hole: null } as const

describe('what a group notes about a ball', () => {
  it('is written once and taken away again', () => {
    const drive = driveFacts(start, { ball: alder, ...at }, 'alder' as PlayerId)
    const teeShot = teeShotFacts(start, { ball: alder, ...at }, 'alder' as PlayerId)
    const likely = likelyScoreFacts(start, { ball: alder, ...at }, 7)
    const marker = markerFacts(start, alder, 'birch' as PlayerId)
    const { notes } = outingAfter(drive, teeShot, likely, marker)
    expect(notes.drives.get(alder)?.get('1/1')).toBe('alder')
    expect(notes.teeShots.get(alder)?.get('1/1')).toBe('alder')
    expect(notes.likelyScores.get(alder)?.get('1/1')).toBe(7)
    expect(notes.markers.get(alder)).toBe('birch')
    const none = outingAfter(
      [...drive, ...teeShot, ...likely, ...marker],
      [
        ...driveFacts(start, { ball: alder, ...at }, null),
        ...teeShotFacts(start, { ball: alder, ...at }, null),
        ...likelyScoreFacts(start, { ball: alder, ...at }, null),
        ...markerFacts(start, alder, null),
      ],
    ).notes
    expect([none.drives.size, none.teeShots.size, none.likelyScores.size, none.markers.size]).toEqual([0, 0, 0, 0])
  })

  it('is nothing about a ball in no group', () => {
    expect(markerFacts(start, oak, null)).toEqual([])
    expect(driveFacts(start, { ball: oak, ...at }, 'alder' as PlayerId)).toEqual([])
    expect(certifyFacts(start, oak, 'player')).toEqual([])
  })
})

describe('a ball that is not there all the time', () => {
  const absence = (...acts: readonly (readonly NewFact[])[]) => outingAfter(...acts).notes.absences.get(alder)

  it('joins late, and may leave early too', () => {
    const joined = joinFacts(start, alder, { hole: 3, lap: 1 }, 'Traffic.')
    expect(absence(joined)).toEqual({
      ball: alder,
      joinedAt: '3/1',
      leftAt: null,
      isWithdrawn: false,
      reason: 'Traffic.',
    })
    const left = leaveFacts(outingAfter(joined), alder, { hole: 8, lap: 1 }, null)
    expect(absence(joined, left)).toMatchObject({ joinedAt: '3/1', leftAt: '8/1', isWithdrawn: false })
  })

  it('withdraws, does not show, or is there after all', () => {
    expect(absence(withdrawFacts(start, alder, { hole: 7, lap: 1 }, 'Back.'))).toMatchObject({
      leftAt: '7/1',
      isWithdrawn: true,
      reason: 'Back.',
    })
    expect(absence(noShowFacts(start, alder, null))).toMatchObject({ joinedAt: null, leftAt: null, isWithdrawn: false })
    expect(absence(noShowFacts(start, alder, null), presentFacts(start, alder))).toBeUndefined()
  })
})

describe('what the desk says', () => {
  it('takes a hole out of play and puts it back', () => {
    const out = holeOutFacts(at, { counts: 'net-par', reason: 'Under water.' })
    expect(outingAfter(out).notes.holesOut.get('1/1')).toEqual({ counts: 'net-par', reason: 'Under water.' })
    expect(outingAfter(out, holeOutFacts(at, null)).notes.holesOut.size).toBe(0)
  })

  it('gives the playing conditions of the day and takes them away', () => {
    const given = playingConditionsFacts({ strokes: 2, reason: null })
    expect(outingAfter(given).notes.playingConditions).toEqual({ strokes: 2, reason: null })
    expect(outingAfter(given, playingConditionsFacts(null)).notes.playingConditions).toBeNull()
  })

  it('rules, and takes a ruling back', () => {
    const id = 'first' as RulingId
    expect(outingAfter(rulingFacts(id, ruled)).notes.rulings).toEqual([{ id, ruling: ruled }])
    expect(outingAfter(rulingFacts(id, ruled), rulingFacts(id, null)).notes.rulings).toEqual([])
  })
})

describe('a certification', () => {
  const score = (record: 'card' | 'marker', value: number): NewFact => ({
    key: scoreKey({ group: groupA, ball: alder, ...at, record }),
    value,
  })

  it('names the values as they are settled', () => {
    const scored = [score('card', 5)]
    expect(outingAfter(scored, certifyFacts(outingAfter(scored), alder, 'marker')).notes.certified.get(alder)).toEqual({
      byPlayer: null,
      byMarker: [[1, 1, 5]],
    })
  })

  it('waits while a hole has two scores, and of an empty card there is none', () => {
    expect(certifyFacts(outingAfter([score('card', 5), score('marker', 6)]), alder, 'player')).toEqual([])
    expect(certifyFacts(start, alder, 'player')).toEqual([])
  })

  it('can be taken away', () => {
    const scored = [score('card', 5)]
    const signed = certifyFacts(outingAfter(scored), alder, 'player')
    expect(signed.map(({ key }) => key)).toEqual([makeKey('certifiedByPlayer', { group: groupA, ball: alder })])
    expect(outingAfter(scored, signed, uncertifyFacts(start, alder, 'player')).notes.certified.size).toBe(0)
  })
})

describe('every act beside the scores', () => {
  const acts: readonly (readonly [string, readonly NewFact[]])[] = [
    ['a drive', driveFacts(start, { ball: alder, ...at }, 'alder' as PlayerId)],
    ['a likely score', likelyScoreFacts(start, { ball: alder, ...at }, 7)],
    ['a marker', markerFacts(start, alder, 'birch' as PlayerId)],
    ['a late comer', joinFacts(start, alder, at, null)],
    ['a ball that leaves', leaveFacts(start, alder, at, null)],
    ['a withdrawal', withdrawFacts(start, alder, null, null)],
    ['a hole out of play', holeOutFacts(at, { counts: 'nothing', reason: null })],
    ['playing conditions', playingConditionsFacts({ strokes: 1, reason: null })],
    ['a ruling', rulingFacts('first' as RulingId, ruled)],
  ]

  it.each(acts)('is taken back whole, and what stood before is there again: %s', (_, facts) => {
    const first = actAfter([], 'fir', facts)
    const again = actAfter(
      [first],
      'oak',
      facts.map(({ key }) => ({ key, value: null })),
    )
    expect(outingWith([first]).notes).not.toEqual(start.notes)
    for (const [ops, before] of [
      [[first], start.notes],
      [[first, again], outingWith([first]).notes],
    ] as const) {
      const last = ops.at(-1) as (typeof ops)[number]
      const undone = undoOf(stateWith(ops), [startOp, ...ops], last)
      expect(undone.left).toEqual([])
      expect(outingWith([...ops, makeOp([startOp, ...ops], 'fir', undone.facts)]).notes).toEqual(before)
    }
  })
})
