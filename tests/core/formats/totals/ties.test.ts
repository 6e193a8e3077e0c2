import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { formatNames } from '#core/formats/format-names.ts'
import type { TieTerms } from '#core/formats/game-methods.ts'
import { formatTable } from '#core/formats/table.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import { type PlayedGame, resultOf } from '#tests/kit/played-game.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

const usual: TieTerms = { method: 'points', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'lot' }

/** Gross scores that earn a scratch player these points, in the order of the card. */
const scoring = (points: readonly number[]): number[] =>
  points.map((each, place) => (quillmoor.pars[place] ?? 4) + 2 - each)

const stableford = (
  points: Readonly<Record<string, readonly number[]>>,
  ties: TieTerms = usual,
  more: Partial<PlayedGame> = {},
) =>
  resultOf('total', {
    format: 'stableford',
    sides: Object.keys(points).map(id => [id]),
    scores: Object.fromEntries(Object.entries(points).map(([id, each]) => [id, scoring(each)])),
    methods: { ties },
    ...more,
  })

type Result = ReturnType<typeof stableford>

const places = ({ lines }: Result) => lines.map(({ side, place, isTied }) => [side[0], place, isTied])
const working = ({ ties }: Result) =>
  ties[0]?.working.map(({ name, figures }) => [name, ...figures.map(formatDecimal)]) ?? []

const twos = (change: Readonly<Record<number, number>>) =>
  Array.from({ length: 18 }, (_, place) => change[place + 1] ?? 2)

// Committee Procedures 5A(6) and the unions' advice on ties, quoted second-hand; no total lets ties stand unasked.
describe('the terms that a new total proposes', () => {
  const totals = formatNames.filter(format => formatTable[format].contest === 'total')

  it.each(totals)('%s: the last nine, six, three and one of the card by what it counts', format => {
    const { measure, sides } = formatTable[format]
    const isShare = sides.balls.max === 1
    const ofNet = isShare ? 'share-of-handicap' : 'strokes-as-they-fall'
    const method = measure.unit !== 'strokes' ? 'points' : measure.isNet ? ofNet : 'gross'
    const { ties } = defaultGameMethods(format)
    expect(ties).toEqual({ method, scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'shared' })
  })

  it('are the proposal alone: a game that has none lets ties stand', () => {
    const level = Array<number>(18).fill(2)
    const [front, back] = [
      [3, ...level.slice(1, 17), 1],
      [1, ...level.slice(1, 17), 3],
    ]
    const none = stableford({ A: front, B: back }, usual, { methods: { ties: null } })
    expect(places(none)).toEqual([
      ['A', 1, true],
      ['B', 1, true],
    ])
    expect(none.ties).toEqual([])
  })
})

/** Three who are level on every hole, each off nine, with these scores on three extra holes. */
const playedOff = (extra: Readonly<Record<string, readonly (number | null)[]>>, more: Partial<PlayedGame> = {}) =>
  resultOf('total', {
    format: 'stroke-play-net',
    sides: [['A'], ['B'], ['C']],
    handicaps: { A: 9, B: 9, C: 9 },
    scores: Object.fromEntries(['A', 'B', 'C'].map(id => [id, [...quillmoor.pars, ...(extra[id] ?? [])]])),
    extra: [1, 2, 3].map(number => ({ hole: number, lap: 2 })),
    methods: { allowancePercent: 100, ties: { ...usual, method: 'share-of-handicap', ifStillTied: 'extra-holes' } },
    ...more,
  })

// Advice on deciding ties with handicaps, before 2019; the sum over the extra holes: common practice.
describe('a play-off over extra holes', () => {
  it('puts those in order whom the countback leaves tied, off the share of the handicap', () => {
    const result = playedOff({ A: [5, 4, 4], B: [4, 4, 4], C: [4, 4, 5] })
    // Three holes of eighteen are a sixth of nine: 1.5, so two.
    expect(result.ties[0]?.playOffs).toEqual([
      { sides: [['B'], ['A'], ['C']], holes: ['1/2', '2/2', '3/2'], figures: [10, 11, 11] },
    ])
    expect(places(result)).toEqual([
      ['B', 1, false],
      ['A', 2, true],
      ['C', 2, true],
    ])
    expect(result.ties[0]).toMatchObject({ decidedBy: ['play-off', null], ifStillTied: 'extra-holes' })
  })

  it('takes no handicap off gross scores', () => {
    const gross = {
      format: 'stroke-play-gross',
      methods: { ties: { ...usual, method: 'gross', ifStillTied: 'extra-holes' } },
    } as const
    const result = playedOff({ A: [5, 4, 4], B: [4, 4, 4], C: [4, 5, 5] }, gross)
    expect(result.ties[0]?.playOffs[0]?.figures).toEqual([12, 13, 14])
    expect(result.ties[0]?.ifStillTied).toBeNull()
  })

  it('waits until each has a score on each of its holes', () => {
    const result = playedOff({ A: [5, 4, 4], B: [4, 4, 4], C: [4, 4, null] })
    expect([result.ties[0]?.playOffs, places(result).map(([, place]) => place)]).toEqual([[], [1, 1, 1]])
  })

  it('is none where the terms do not say so, whatever was played for a match', () => {
    for (const ifStillTied of ['shared', 'lot', 'play-off'] as const) {
      const ties = { ...usual, method: 'share-of-handicap', ifStillTied } as const
      const result = playedOff(
        { A: [5, 4, 4], B: [4, 4, 4], C: [4, 4, 5] },
        { methods: { allowancePercent: 100, ties } },
      )
      expect([result.ties[0]?.playOffs, result.ties[0]?.ifStillTied]).toEqual([[], ifStillTied])
    }
  })
})

describe('the countback of a game', () => {
  // Practice case CB-01; Committee Procedures 5A(6), quoted second-hand.
  it('puts three on 36 in order, with the step between each two', () => {
    const result = stableford({
      C: [3, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 1, 2, 2, 2, 2],
      A: [2, 2, 2, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 3, 2, 2, 2, 2],
      B: [1, 2, 3, 2, 2, 2, 1, 2, 2, 2, 3, 1, 2, 2, 2, 2, 3, 2],
    })
    expect(places(result)).toEqual([
      ['B', 1, false],
      ['A', 2, false],
      ['C', 3, false],
    ])
    expect(result.ties[0]).toMatchObject({ method: 'points', decidedBy: ['last-3', 'last-9'], ifStillTied: null })
    expect(working(result)).toEqual([
      ['last-9', '19', '19', '17'],
      ['last-6', '13', '13', '11'],
      ['last-3', '7', '6', '6'],
    ])
  })

  // Practice case CB-02: 10 to 18 whatever the start, unless the terms say the holes played last.
  it.each([
    ['card-order', ['Y', 'X']],
    ['order-of-play', ['X', 'Y']],
  ] as const)('after a shotgun start counts the %s', (holes, order) => {
    const byCard = {
      X: [2, 3, 2, 2, 2, 3, 2, 2, 2, 1, 2, 2, 1, 2, 2, 1, 2, 2],
      Y: [2, 2, 2, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2],
    }
    const round = roundFrom(10, 18)
    const scores = Object.fromEntries(
      Object.entries(byCard).map(([id, points]) => [id, round.map(({ hole }) => scoring(points)[hole - 1] ?? 0)]),
    )
    const { lines } = stableford(byCard, { ...usual, holes }, { round, scores })
    expect(lines.map(({ side }) => side[0])).toEqual(order)
  })

  // Practice case CB-04.
  it('goes on to the last six of the first nine', () => {
    const result = stableford({ A: twos({ 1: 3, 6: 1 }), B: twos({ 4: 1, 5: 3 }) })
    expect(result.lines.map(({ side }) => side[0])).toEqual(['B', 'A'])
    expect(result.ties[0]?.decidedBy).toEqual(['first-nine-last-6'])
    expect(working(result).at(-1)).toEqual(['first-nine-last-6', '12', '11'])
  })

  // Practice case CB-05; custom. In threes from the last: derived.
  it('of nine holes takes the last six, three and one, or threes', () => {
    const points = { A: [2, 3, 2, 2, 2, 2, 2, 2, 2], B: [3, 2, 2, 2, 2, 2, 2, 1, 3] }
    const nine = { round: roundFrom(1, 9) }
    const result = stableford(points, usual, nine)
    expect([places(result)[0], result.ties[0]?.decidedBy]).toEqual([['B', 1, false], ['last-hole']])
    const inThrees = stableford(
      { A: [2, 2, 2, 3, 1, 2, 2, 2, 2], B: [3, 2, 2, 2, 1, 2, 2, 2, 2] },
      { ...usual, scheme: 'threes-from-last' },
      nine,
    )
    expect([places(inThrees)[0], inThrees.ties[0]?.decidedBy]).toEqual([['A', 1, false], ['4-6']])
  })

  // Practice case CB-06: house terms.
  it.each([
    ['threes-from-last', 'B', '16-18'],
    ['nine-six-three-one', 'A', 'last-9'],
  ] as const)('by %s is %s by %s', (scheme, winner, step) => {
    const result = stableford({ A: twos({ 9: 1, 10: 3 }), B: twos({ 12: 1, 18: 3 }) }, { ...usual, scheme })
    expect([places(result)[0]?.[0], result.ties[0]?.decidedBy]).toEqual([winner, [step]])
  })

  it('leaves level sides tied, with what the terms say then, and a place behind both', () => {
    const result = stableford({ A: twos({}), B: twos({}), C: twos({ 1: 3, 18: 1 }), D: twos({ 1: 1 }) })
    expect(places(result)).toEqual([
      ['A', 1, true],
      ['B', 1, true],
      ['C', 3, false],
      ['D', 4, false],
    ])
    expect(result.ties[0]).toMatchObject({ decidedBy: [null, 'last-9'], ifStillTied: 'lot' })
    expect(working(result)).toHaveLength(7)
  })

  it('waits until every side of the tie is finished', () => {
    const result = stableford({ A: twos({ 18: 3 }), B: twos({ 17: 5 }).slice(0, 17), C: twos({ 1: 3 }) })
    expect(places(result).map(([, place]) => place)).toEqual([1, 1, 1])
    expect(result.ties).toEqual([])
  })

  it('is none without terms', () => {
    const result = stableford({ A: twos({ 1: 3, 18: 1 }), B: twos({}) }, usual, { methods: { ties: null } })
    expect(places(result).map(([, place, isTied]) => [place, isTied])).toEqual([
      [1, true],
      [1, true],
    ])
    expect(result.ties).toEqual([])
  })
})

// Shares of the handicap or strokes as they fall: national unions' advice, quoted second-hand; the two differ.
describe('the countback of net strokes', () => {
  const pars: readonly number[] = quillmoor.pars
  const medal = (
    method: TieTerms['method'],
    handicaps: Readonly<Record<string, number>>,
    over: Readonly<Record<string, readonly number[]>>,
  ) =>
    resultOf('total', {
      format: 'stroke-play-net',
      sides: Object.keys(handicaps).map(id => [id]),
      handicaps,
      scores: Object.fromEntries(
        Object.entries(over).map(([id, holes]) => [
          id,
          pars.map((par, place) => par + (holes.includes(place + 1) ? 1 : 0)),
        ]),
      ),
      methods: { allowancePercent: 100, ties: { ...usual, method } },
    })

  // One stroke falls at the 5th (index 1): half of it counts on the last nine all the same.
  it('takes half the handicap off the last nine, unrounded', () => {
    const result = medal('share-of-handicap', { A: 1, B: 0 }, { A: [5], B: [] })
    expect(result.ties[0]).toMatchObject({ method: 'share-of-handicap', decidedBy: ['last-9'] })
    expect(working(result)).toEqual([['last-9', '35.5', '36']])
  })

  it('or the strokes that fall there', () => {
    const result = medal('strokes-as-they-fall', { A: 1, B: 0 }, { A: [5], B: [] })
    expect(result.ties[0]?.decidedBy).toEqual([null])
    expect(working(result)[0]).toEqual(['last-9', '36', '36'])
  })

  it('or gross scores', () => {
    const result = medal('gross', { A: 1, B: 0 }, { A: [18], B: [] })
    expect([places(result)[0]?.[0], working(result)]).toEqual(['B', [['last-9', '36', '37']]])
  })

  it('counts the strokes of a side of two balls as they fall, whatever the terms name', () => {
    const flat = (change: Readonly<Record<number, number>>) => pars.map((par, place) => change[place + 1] ?? par)
    const result = resultOf('total', {
      format: 'four-ball-stroke-play',
      sides: [
        ['A', 'B'],
        ['C', 'D'],
      ],
      handicaps: { A: 0, B: 2, C: 0, D: 0 },
      scores: { A: flat({}), B: flat({}), C: flat({ 1: 3 }), D: flat({ 10: 3 }) },
      methods: { allowancePercent: 100, ties: { ...usual, method: 'share-of-handicap' } },
    })
    // B's strokes fall at the 5th and the 14th: 70, one of it on the last nine; so is D's better hole.
    expect(result.lines.map(({ total }) => total)).toEqual([70, 70])
    expect(result.ties[0]).toMatchObject({ method: 'strokes-as-they-fall', decidedBy: ['last-6'] })
    expect(working(result)).toEqual([
      ['last-9', '35', '35'],
      ['last-6', '24', '25'],
    ])
  })

  it('counts the better ball of a side, gross where the terms say so', () => {
    const result = resultOf('total', {
      format: 'four-ball-stroke-play',
      sides: [
        ['A', 'B'],
        ['C', 'D'],
      ],
      handicaps: { B: 18 },
      scores: { A: pars, B: pars.map(par => par + 1), C: pars, D: pars.map(par => par + 3) },
      methods: { allowancePercent: 100, ties: { ...usual, method: 'gross' } },
    })
    expect(result.ties[0]?.decidedBy).toEqual([null])
    expect(working(result)[0]).toEqual(['last-9', '36', '36'])
  })
})
