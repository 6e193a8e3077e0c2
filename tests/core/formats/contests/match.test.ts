import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { formatMatchLine } from '#core/formats/match-text.ts'
import { card, line, singles, strokesOn } from '#tests/kit/match-lines.ts'
import { ball, hole, type PlayedGame, resultOf } from '#tests/kit/played-game.ts'

describe('a singles match', () => {
  // Rules of Golf, rule 3.2a; R&A and USGA; 2019 and 2023.
  it('ends where the lead exceeds what is left', () => {
    const alder = [4, 5, 3, 4, 5, 3, 4, 5, 4, 4, 4, 3, 5, 4, 4]
    const birch = [5, 5, 4, 5, 5, 3, 6, 5, 5, 4, 5, 3, 6, 5, 4]
    const found = singles(alder, birch, { handicaps: { alder: 9, birch: 15 } })
    expect(strokesOn(found, 'birch')).toEqual([2, 5, 7, 11, 14, 17])
    expect(formatMatchLine(found.state)).toBe('won 4 & 3')
    expect(found).toMatchObject({ decidedBy: 'play', state: { winner: 'A' } })
  })

  // Rules of Handicapping, Appendix E: nine holes take strokes in ascending order among the nine.
  it('over nine holes ranks the indexes of the nine', () => {
    const found = singles([], [], { round: roundFrom(1, 9), handicaps: { alder: 4, birch: 11 } })
    expect(strokesOn(found, 'birch')).toEqual([1, 2, 4, 5, 7, 8, 9])
  })

  // Rules of Golf, rule 3.2c(1): a handicap declared too low is what the player plays off.
  it('goes on with the lower handicap that was declared', () => {
    const found = singles([], [], {
      handicaps: { alder: 8, birch: 16 },
      happenings: { playsOff: new Map([[ball('birch'), 14]]) },
    })
    expect(strokesOn(found, 'birch')).toEqual([2, 5, 7, 11, 14, 17])
  })

  it('says of each hole why it went as it did', () => {
    const found = singles(card({ 1: -1, 2: 'picked-up', 3: 'picked-up' }, 4), card({ 3: 'picked-up' }, 4))
    expect(found.holes.slice(0, 5).map(({ result, reason, balls }) => [result, reason, balls])).toEqual([
      [1, 'lower', ['alder']],
      [-1, 'only-holed', ['birch']],
      [0, 'none-holed', []],
      [0, 'level', ['alder', 'birch']],
      [null, null, []],
    ])
  })
})

describe('extra holes', () => {
  const extra = [
    { hole: 1, lap: 2 },
    { hole: 2, lap: 2 },
  ]

  // Rules of Golf, rule 3.2c: an extended handicap match keeps the strokes of the same holes; R&A, 2019.
  it('decide a level match, with the strokes of the same hole in the round', () => {
    const found = singles([...card(), 4], [...card({ 5: 1 }), 5], { handicaps: { birch: 1 }, extra })
    // One stroke on index 1, hole 5; none on hole 1.
    expect(formatMatchLine(found.state)).toBe('won at the 19th')
    const twice = singles([...card(), 4], [...card({ 5: 1, 1: 1 }, 18), 5], {
      handicaps: { birch: 18 },
      extra,
    })
    expect(twice.strokes.get(ball('birch'))?.byHole.get(hole(1, 2))).toBe(1)
  })

  it('are no part of a match that is won before them', () => {
    expect(singles([...card({ 1: -1 }), 9], [...card(), 3], { extra }).holes).toHaveLength(18)
  })

  it('keep a level match open', () => {
    const found = singles(card(), card(), { extra })
    expect([formatMatchLine(found.state), found.decidedBy, found.holes.length]).toEqual([
      'all square after 18',
      null,
      19,
    ])
  })
})

// Rules of Golf, rule 3.2b; R&A and USGA; 2019 and 2023.

describe('three balls', () => {
  const scores = { alder: card(), birch: card({ 1: -1 }), cedar: card({ 1: 1 }) }
  const sides = [['alder'], ['birch'], ['cedar']]
  const handicaps = { alder: 5, birch: 9, cedar: 14 }
  const given = (format: 'three-ball-match' | 'three-ball-match-from-lowest') =>
    resultOf('match', { format, sides, handicaps, scores }).matches.map(match =>
      match.sides.flat().map(id => match.strokes.get(id)?.strokes),
    )

  // Rules of Golf, rule 21.4: two separate matches with one ball.
  it('make three matches, each with its own difference', () => {
    expect(given('three-ball-match')).toEqual([
      [0, 4],
      [0, 9],
      [0, 5],
    ])
  })

  it('or all off the lowest (common practice)', () => {
    expect(given('three-ball-match-from-lowest')).toEqual([
      [0, 4],
      [0, 9],
      [4, 9],
    ])
  })
})

describe('one ball of two players', () => {
  const strokes = (
    format: 'foursomes-match' | 'greensomes-match' | 'chapman-match',
    first: readonly number[],
    second: readonly number[],
    sideStrokes: 'from-rounded-side-handicaps' | 'half-of-difference',
  ) => {
    const game = { format, sides: [['ab'], ['cd']], handicaps: { ab: first, cd: second }, scores: {} }
    const found = line({ ...game, methods: { sideStrokes } })
    return ['ab', 'cd'].map(id => found.strokes.get(ball(id))?.strokes)
  }

  // Rules of Handicapping, Appendix C, 2024; terms of clubs and a county's page, second-hand.
  it.each([
    ['foursomes-match', [5, 10], [10, 20], 'from-rounded-side-handicaps', [0, 7]],
    ['foursomes-match', [5, 10], [10, 20], 'half-of-difference', [0, 8]],
    ['foursomes-match', [15, 20], [6, 10], 'from-rounded-side-handicaps', [10, 0]],
    ['greensomes-match', [4, 8], [6, 11], 'from-rounded-side-handicaps', [0, 2]],
    ['greensomes-match', [8, 4], [11, 6], 'half-of-difference', [0, 2]],
    ['chapman-match', [4, 8], [6, 11], 'half-of-difference', [0, 2]],
  ] as const)('%s of %j and %j, %s, gives %j', (format, first, second, method, expected) => {
    expect(strokes(format, first, second, method)).toEqual(expected)
  })

  it('needs two players a ball', () => {
    expect(() => strokes('foursomes-match', [5], [10, 20], 'half-of-difference')).toThrow('wrong sides')
  })
})

describe('the total of two', () => {
  const first = (scores: PlayedGame['scores']) =>
    line({
      format: 'total-of-two-match',
      sides: [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
      scores,
    }).holes[0]

  // Rules of Handicapping, Appendix C, names the form; that both have to hole out is common practice.
  it('adds both partners, and is lost where one of them is not in', () => {
    expect(first({ alder: [3], cedar: [5], birch: [4], rowan: [5] })).toMatchObject({ result: 1, reason: 'lower' })
    expect(first({ alder: [3], cedar: ['picked-up'], birch: [7], rowan: [7] })).toMatchObject({
      result: -1,
      reason: 'only-holed',
    })
    expect(first({ alder: [3], birch: [4], rowan: [5] })?.result).toBeNull()
  })
})

describe('one against the better of several', () => {
  const game = (...sides: string[][]): PlayedGame => ({
    format: 'best-ball-match',
    sides,
    scores: {
      alder: card(),
      birch: card({ 1: -1, 2: 1 }),
      cedar: card({ 1: 1, 2: 'picked-up' }),
      rowan: card({ 2: -1 }),
    },
  })

  // Rules of Golf, rule 23.1; R&A and USGA; 2023.
  it.each([
    [
      [['alder'], ['birch', 'cedar']],
      [-1, 1],
    ],
    [
      [['alder'], ['birch', 'cedar', 'rowan']],
      [-1, -1],
    ],
    [
      [['birch', 'cedar'], ['alder']],
      [1, -1],
    ],
  ])('%j', (sides, expected) => {
    expect(
      line(game(...sides))
        .holes.slice(0, 2)
        .map(({ result }) => result),
    ).toEqual(expected)
  })

  it.each([
    [[['alder'], ['birch']]],
    [
      [
        ['alder', 'rowan'],
        ['birch', 'cedar'],
      ],
    ],
  ])('is not %j', sides => {
    expect(() => line(game(...sides))).toThrow('wrong sides')
  })
})
