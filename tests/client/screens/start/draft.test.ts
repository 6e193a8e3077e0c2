import { describe, expect, test } from 'vitest'
import { sidesOfDraft } from '#client/screens/games/game-acts.ts'
import { waysToSide } from '#client/screens/games/sides.ts'
import { type Draft, emptyDraft, emptyPlayer, indexesTwice, withIndexesFilled } from '#client/screens/start/draft.ts'
import { ballsOfDraft } from '#client/screens/start/draft-balls.ts'
import { faultsOfDraft } from '#client/screens/start/draft-faults.ts'
import { factsOfDraft } from '#client/screens/start/facts-of-draft.ts'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { factsReplacing } from '#core/outing/acts.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { DeviceId, GameId, LogId } from '#core/values/ids.ts'
import { isKnownValue } from '#shared/facts.ts'

const player = (id: string, name: string, kind: Draft['players'][number]['kind'], figure: string, tee = '') => ({
  ...emptyPlayer(id),
  name,
  kind,
  figure,
  tee,
})

const whole: Draft = {
  ...withIndexesFilled(emptyDraft),
  courseName: 'Quillmoor',
  tees: [{ id: 't1', name: 'White', courseRating: '71.4', slope: '128', par: '72' }],
  players: [
    player('p1', 'Alder', 'index', '13.1', 't1'),
    player('p2', 'Birch', 'course-handicap', '7'),
    player('p3', 'Cedar', 'plain-strokes', '21'),
    player('p4', 'Rowan', 'index', '+1.3', 't1'),
  ],
  games: {
    ...emptyDraft.games,
    'four-ball-match': {
      ...emptyDraft.games['four-ball-match'],
      isOn: true,
      sidesChosen: [
        ['p1', 'p3'],
        ['p2', 'p4'],
      ],
    },
  },
  startHole: 10,
}

function outingOfDraft(draft: Draft) {
  const facts = factsReplacing(emptyLog, factsOfDraft(draft, '2026-05-16'))
  const op = { log: 'log' as LogId, scope: null, device: 'd' as DeviceId, n: 1, tick: 1, at: 0, act: 'start', facts }
  return outingOf(foldOps(emptyLog, [op]), isKnownValue)
}

describe('an outing from the fields of the page', () => {
  test('holds whichever handicap each player has, the tee with its ratings, and the terms', () => {
    const outing = outingOfDraft(whole)
    expect(outing.newer).toEqual([])
    expect([outing.title, outing.courseName, outing.day, outing.length, outing.rules]).toEqual([
      'Quillmoor',
      'Quillmoor',
      '2026-05-16',
      18,
      true,
    ])
    expect([...outing.players.values()].map(({ handicap }) => handicap)).toEqual([
      { kind: 'index', tenths: 131 },
      { kind: 'course-handicap', strokes: 7 },
      { kind: 'plain-strokes', strokes: 21 },
      { kind: 'index', tenths: -13 },
    ])
    expect([...outing.tees.values()][0]?.ratings).toEqual({ courseRatingTenths: 714, slope: 128, par: 72 })
  })

  test('starts from the hole chosen and plays the sides chosen, with nothing missing', () => {
    const outing = outingOfDraft(whole)
    expect([...outing.groups.values()][0]?.round[0]).toEqual({ hole: 10, lap: 1 })
    const results = resultsOf(outing)
    expect([...results.games.values()].map(({ kind }) => kind).sort()).toEqual(['match', 'total'])
    const match = results.games.get('four-ball-match' as GameId)
    expect(match?.kind === 'match' && match.matches[0]?.sides).toEqual([
      ['p1', 'p3'],
      ['p2', 'p4'],
    ])
  })

  test('over nine holes the ratings are those of the nine', () => {
    const tees = [{ id: 't1', name: 'White', courseRating: '35.7', slope: '128', par: '36' }]
    const outing = outingOfDraft({ ...whole, length: 9, startHole: 1, tees })
    expect(outing.holes.size).toBe(9)
    expect([...outing.tees.values()][0]).toMatchObject({ ratings: null, frontRatings: { courseRatingTenths: 357 } })
  })
})

describe('what keeps an outing from starting', () => {
  test('nothing in a whole draft', () => {
    expect(faultsOfDraft(whole)).toEqual([])
  })

  test('each missing field, by its id', () => {
    const fields = faultsOfDraft({ ...emptyDraft, courseName: ' ' }).map(({ field }) => field)
    expect(fields).toContain('courseName')
    expect(fields).toContain('hole-18')
    expect(fields).toContain('p1-name')
    expect(fields).toContain('p2-figure')
  })

  test('an index without a tee, a slope out of range, one name twice, a match that lacks players', () => {
    const [first, ...others] = whole.players
    const players = [
      { ...(first ?? emptyPlayer('p1')), tee: '' },
      ...others.slice(0, 1).map(p => ({ ...p, name: 'Alder' })),
    ]
    const tees = whole.tees.map(tee => ({ ...tee, slope: '156' }))
    const fields = faultsOfDraft({ ...whole, players, tees }).map(({ field }) => field)
    expect(fields).toEqual(['t1-slope', 'p1-tee', 'p2-name', 'four-ball-match'])
  })

  test('never a stroke index printed twice, which is only named', () => {
    const holes = whole.holes.map((hole, place) => (place === 6 ? { ...hole, index: '3' } : hole))
    expect(faultsOfDraft({ ...whole, holes })).toEqual([])
    expect(indexesTwice({ ...whole, holes })).toEqual([{ index: '3', holes: [3, 7] }])
  })

  test('never a missing handicap where no game asks for one', () => {
    const games = { ...emptyDraft.games, stableford: { ...emptyDraft.games.stableford, isOn: false } }
    const gross = { ...games, 'stroke-play-gross': { ...games['stroke-play-gross'], isOn: true } }
    expect(faultsOfDraft({ ...whole, players: [player('p1', 'Alder', 'index', '')], games: gross })).toEqual([])
  })
})

describe('the ways to make sides', () => {
  test('four players make three pairings and six singles', () => {
    expect(waysToSide('four-ball-match', whole.players)).toHaveLength(3)
    expect(waysToSide('singles-match', whole.players)).toHaveLength(6)
  })

  test('three players make no four-ball', () => {
    expect(waysToSide('four-ball-match', whole.players.slice(1))).toEqual([])
  })
})

describe('sides and partners chosen', () => {
  const five = [...whole.players, { ...emptyPlayer('p5'), name: 'Fir' }]
  const sidesOf = (changed: Partial<Draft>) => {
    const balls = ballsOfDraft({ ...whole, ...changed }).map(({ id }) => ({ id, name: id }))
    return sidesOfDraft('four-ball-match', whole.games['four-ball-match'], balls)
  }
  const chosen = [
    ['p1', 'p3'],
    ['p2', 'p4'],
  ]

  test('stay when a player is added before, behind or between them', () => {
    expect(sidesOf({})).toEqual(chosen)
    for (const players of [five, five.toReversed(), [...five.slice(4), ...five.slice(0, 4)]]) {
      expect(sidesOf({ players })).toEqual(chosen)
    }
  })

  test('give way when one of them is taken away', () => {
    const others = five.filter(({ id }) => id !== 'p3')
    expect(sidesOf({ players: others })).toEqual([
      ['p1', 'p2'],
      ['p4', 'p5'],
    ])
  })

  test('of one ball stay together when two more come', () => {
    const six = [{ ...emptyPlayer('p6'), name: 'Oak' }, ...five]
    const pairs = {
      ...whole,
      ballPlayers: 2,
      partnersChosen: [
        ['p1', 'p4'],
        ['p2', 'p3'],
      ],
      players: six,
    }
    expect(ballsOfDraft(pairs).map(({ players }) => players)).toEqual([
      ['p1', 'p4'],
      ['p2', 'p3'],
      ['p6', 'p5'],
    ])
    expect(ballsOfDraft({ ...pairs, players: five })).toEqual([])
  })
})
