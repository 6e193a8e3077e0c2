import { describe, expect, it } from 'vitest'
import { happeningsOf } from '#core/outing/happenings-of.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { Json } from '#core/values/json.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { actAfter, alder, birch, groupA, groupB, outingWith, startOp } from '#tests/kit/two-groups.ts'

type Slots = NonNullable<Parameters<typeof makeKey>[1]>
type Kind = Parameters<typeof makeKey>[0]

const said = (kind: Kind, slots: Slots, value: Json) => ({ key: makeKey(kind, slots), value })
const act = (...facts: { key: string; value: Json }[]) => actAfter([], 'desk', facts)
const at = { hole: 1, lap: 1 }

/** What is counted of each kind about Alder, who plays in group a. */
const aboutAlder: readonly (readonly [Kind, (group: string) => Slots, Json, (outing: Outing) => unknown])[] = [
  ['drive', group => ({ group, ball: alder, ...at }), 'alder', ({ notes }) => notes.drives.get(alder)],
  ['teeShot', group => ({ group, ball: alder, ...at }), 'alder', ({ notes }) => notes.teeShots.get(alder)],
  ['likelyScore', group => ({ group, ball: alder, ...at }), 7, ({ notes }) => notes.likelyScores.get(alder)],
  [
    'absence',
    group => ({ group, ball: alder }),
    { joinedAt: [2, 1], leftAt: null, isWithdrawn: false, reason: null },
    ({ notes }) => notes.absences.get(alder),
  ],
  ['marker', group => ({ group, ball: alder }), 'birch', ({ notes }) => notes.markers.get(alder)],
  [
    'certifiedByPlayer',
    group => ({ group, ball: alder }),
    { scores: [[1, 1, 4]] },
    ({ notes }) => notes.certified.get(alder)?.byPlayer,
  ],
  [
    'certifiedByMarker',
    group => ({ group, ball: alder }),
    { scores: [[1, 1, 4]] },
    ({ notes }) => notes.certified.get(alder)?.byMarker,
  ],
  [
    'concededStroke',
    group => ({ group, game: 'points', ball: alder, ...at }),
    4,
    outing => gameNotes(outing)?.strokeConcessions[0],
  ],
  [
    'concededHole',
    group => ({ group, game: 'points', ball: alder, ...at }),
    { to: null },
    outing => gameNotes(outing)?.holeConcessions[0],
  ],
  [
    'concededMatch',
    group => ({ group, game: 'points', ball: alder }),
    { to: 'birch' },
    outing => gameNotes(outing)?.matchConcessions[0],
  ],
  ['press', group => ({ group, game: 'points', ...at }), { by: 'alder' }, outing => gameNotes(outing)?.presses[0]],
]

const gameNotes = ({ notes }: Outing, game = 'points') =>
  [...notes.ofGames].find(([id]) => (id as string) === game)?.[1]

describe('a group is heard about its own balls alone', () => {
  it.each(aboutAlder)('%s', (kind, slots, value, found) => {
    expect(found(outingWith([act(said(kind, slots('a'), value))]))).toBeDefined()
    expect(found(outingWith([act(said(kind, slots('b'), value))]))).toBeUndefined()
  })

  it.each(aboutAlder)('%s: after a move the group that plays the hole', (kind, slots, value, found) => {
    const place = { group: 'b', position: 2, elsewhere: [{ group: 'a', holes: [[1, 1]] }] }
    const moved = act(said('place', { ball: alder }, place))
    const isOfHole = 'hole' in slots('a')
    const [before, after] = ['a', 'b'].map(group => {
      const op = makeOp([startOp, moved], 'fir', [{ ...said(kind, slots(group), value), replaces: [] }])
      return found(outingWith([moved, op]))
    })
    expect([before !== undefined, after !== undefined]).toEqual(isOfHole ? [true, false] : [false, true])
  })

  it('speaks for a match across two groups from either side, each under its name', () => {
    const results = [{ between: ['alder', 'birch'], won: 'alder' }]
    const others = [{ between: ['alder', 'birch'], won: 'birch' }]
    const outing = outingWith([
      act(
        said('agreedHole', { group: 'a', game: 'points', ...at }, { results }),
        said('agreedHole', { group: 'b', game: 'points', ...at }, { results: others }),
      ),
    ])
    expect(gameNotes(outing)?.agreedHoles.map(({ group, won }) => [group, won])).toEqual([
      ['a', 'alder'],
      ['b', 'birch'],
    ])
  })
})

describe('the game that a group means', () => {
  const games = (...groups: string[]) =>
    groups.map(group => said('gameFormat', { group, game: 'points' }, 'singles-match'))
  const conceded = (group: string, ball: string) => said('concededMatch', { group, game: 'points', ball }, { to: null })

  it('is its own where it has one of that id, else the one of the outing', () => {
    const outing = outingWith([act(...games('a'), conceded('a', alder), conceded('b', birch))])
    expect(gameNotes(outing, 'a/points')?.matchConcessions).toEqual([{ by: 'alder', to: null }])
    expect(gameNotes(outing)?.matchConcessions).toEqual([{ by: 'birch', to: null }])
  })

  it("is never another group's", () => {
    const facts = ['a', 'b'].map(group => said('gameFormat', { group, game: 'own' }, 'singles-match'))
    const outing = outingWith([
      act(...facts, said('concededMatch', { group: 'b', game: 'own', ball: birch }, { to: null })),
    ])
    expect(gameNotes(outing, 'b/own')?.matchConcessions).toEqual([{ by: 'birch', to: null }])
    expect(gameNotes(outing, 'a/own')).toBeUndefined()
  })
})

describe('a ruling of the desk', () => {
  const ruling = { rule: null, reason: null, kind: 'plays-off', ball: 'alder', strokes: 12 }
  const happenings = (outing: Outing) =>
    new Map(outing.games.map(game => [game.id as string, happeningsOf(outing, game).playsOff.get(alder) ?? null]))

  it('is for every game, or for those it names', () => {
    const match = said('gameFormat', { game: 'match' }, 'singles-match')
    const all = outingWith([act(match, said('ruling', { ruling: 'first' }, { ...ruling, games: null }))])
    expect(happenings(all)).toEqual(
      new Map([
        ['match', 12],
        ['points', 12],
      ]),
    )
    const one = outingWith([act(match, said('ruling', { ruling: 'first' }, { ...ruling, games: ['match'] }))])
    expect(happenings(one)).toEqual(
      new Map([
        ['match', 12],
        ['points', null],
      ]),
    )
  })

  it("names the groups' own games by the id that they gave them", () => {
    const facts = ['a', 'b'].map(group => said('gameFormat', { group, game: 'own' }, 'singles-match'))
    const outing = outingWith([act(...facts, said('ruling', { ruling: 'first' }, { ...ruling, games: ['own'] }))])
    expect(happenings(outing)).toEqual(
      new Map([
        ['a/own', 12],
        ['b/own', 12],
        ['points', null],
      ]),
    )
  })

  it('of two that say what a ball plays off the lower counts, whatever their order', () => {
    for (const [first, second] of [
      [12, 9],
      [9, 12],
    ]) {
      const outing = outingWith([
        act(
          said('ruling', { ruling: 'a' }, { ...ruling, games: null, strokes: first ?? 0 }),
          said('ruling', { ruling: 'b' }, { ...ruling, games: null, strokes: second ?? 0 }),
        ),
      ])
      expect(happenings(outing).get('points')).toBe(9)
    }
  })

  it('on a hole, on the round or out of the game is where it says', () => {
    const ruled = { games: null, rule: null, reason: null, ball: 'alder' }
    const outing = outingWith([
      act(
        said('ruling', { ruling: 'a' }, { ...ruled, kind: 'penalty', hole: [3, 1], strokes: 2, holeLost: true }),
        said('ruling', { ruling: 'b' }, { ...ruled, kind: 'penalty', hole: null, strokes: 2, holeLost: false }),
        said('ruling', { ruling: 'c' }, { ...ruled, kind: 'disqualified', hole: [4, 1] }),
        said('ruling', { ruling: 'd' }, { ...ruled, kind: 'disqualified', hole: null }),
        said('ruling', { ruling: 'e' }, { ...ruled, kind: 'no-penalty' }),
      ),
    ])
    const [points] = outing.games
    const { penalties, disqualified } = happeningsOf(outing, points as NonNullable<typeof points>)
    expect(penalties.map(({ hole, strokes, holeLost }) => [hole, strokes, holeLost])).toEqual([
      ['3/1', 2, true],
      [null, 2, false],
    ])
    expect(disqualified.map(({ ball, hole }) => [ball, hole])).toEqual([
      ['alder', '4/1'],
      ['alder', null],
    ])
    expect(outing.notes.rulings).toHaveLength(5)
  })
})

describe('two values', () => {
  const kinds: readonly (readonly [Kind, Slots, Json, Json])[] = [
    ['concededStroke', { group: 'a', game: 'points', ball: alder, ...at }, 4, 5],
    [
      'agreedResult',
      { group: 'a', game: 'points' },
      { results: [{ between: ['alder', 'birch'], won: 'alder', by: 3, left: 2 }] },
      { results: [{ between: ['alder', 'birch'], won: null, by: 0, left: 0 }] },
    ],
    ['likelyScore', { group: groupA, ball: alder, ...at }, 6, 7],
    ['marker', { group: groupB, ball: birch }, 'alder', 'birch'],
    ['holeOut', at, { counts: 'nothing', reason: null }, { counts: 'net-par', reason: null }],
    [
      'ruling',
      { ruling: 'first' },
      { games: null, rule: null, reason: null, kind: 'plays-off', ball: 'alder', strokes: 9 },
      { games: null, rule: null, reason: null, kind: 'plays-off', ball: 'alder', strokes: 8 },
    ],
    ['playingConditions', {}, { strokes: 1, reason: null }, { strokes: 2, reason: null }],
  ]

  it.each(kinds)('of a %s are a doubt until somebody chooses', (kind, slots, one, other) => {
    const key = makeKey(kind, slots)
    const ops = [
      makeOp([startOp], 'fir', [{ key, value: one, replaces: [] }]),
      makeOp([startOp], 'oak', [{ key, value: other, replaces: [] }]),
    ]
    expect(outingWith(ops).doubts.map(doubt => doubt.key)).toEqual([key])
    const chosen = actAfter(ops, 'desk', [{ key, value: one }])
    expect(outingWith([...ops, chosen]).doubts).toEqual([])
  })
})
