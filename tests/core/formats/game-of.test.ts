import { describe, expect, it } from 'vitest'
import { autumnDay, gameIn, settledWith } from '#tests/kit/plain-outing.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

type Score = number | string | null
const pars: readonly number[] = quillmoor.pars

/** A card of pars with some holes written over. */
const card = (ball: string, over: Readonly<Record<number, Score>> = {}, through = 18) => ({
  ball,
  holes: pars.map((par, place) => (place + 1 in over ? over[place + 1] : place < through ? par : null)),
})

const game = (format: string, sides: readonly (readonly string[])[], more: object = {}) => [
  { id: 'g', format, sides, allowance: 100, ...more },
]

const scratch = autumnDay.players.map(player => ({ ...player, handicap: { strokes: 0 } }))
const singles = [['alder'], ['birch'], ['cedar'], ['rowan']]

const totals = (format: string, scores: readonly object[], change: object = {}) =>
  gameIn(
    settledWith({ players: scratch, games: game(format, singles), main: undefined, scores, ...change }),
    'g',
    'total',
  )

const match = (
  format: string,
  sides: readonly (readonly string[])[],
  scores: readonly object[],
  change: object = {},
) => {
  const settled = settledWith({ players: scratch, games: game(format, sides), main: undefined, scores, ...change })
  const [line] = gameIn(settled, 'g', 'match').matches
  if (line === undefined) throw new Error('no match')
  return line
}

describe('stroke play', () => {
  it('ranks by strokes against par while rounds are under way, ties sharing the place', () => {
    const { lines } = totals('stroke-play-net', [
      card('alder', { 1: 5 }),
      card('birch', {}, 3),
      card('cedar', { 1: 3 }, 6),
      card('rowan', { 2: 6 }, 9),
    ])
    expect(
      lines.map(({ side, place, isTied, overPar, through }) => [side[0], place, isTied, overPar, through]),
    ).toEqual([
      ['cedar', 1, false, -1, 6],
      ['birch', 2, false, 0, 3],
      ['alder', 3, true, 1, 18],
      ['rowan', 3, true, 1, 9],
    ])
  })

  it.each(['picked-up', 'not-played'])('a hole %s is no return, last and without a place', unholed => {
    const { lines } = totals('stroke-play-gross', [card('alder', { 4: unholed }), card('birch', { 1: 9 })])
    expect(lines.map(({ side, place, total, isNoReturn }) => [side[0], place, total, isNoReturn])).toEqual([
      ['birch', 1, 77, false],
      ['cedar', null, 0, false],
      ['rowan', null, 0, false],
      ['alder', null, null, true],
    ])
  })

  it('a blank stays open: neither finished nor no return', () => {
    const [line] = totals('stroke-play-gross', [card('alder', { 4: null })]).lines
    expect(line).toMatchObject({ through: 17, total: 68, isFinished: false, isNoReturn: false })
  })

  it('takes gross scores without asking for any handicap', () => {
    const players = autumnDay.players.map(({ handicap: _, ...player }) => player)
    const { lines, strokes } = totals('stroke-play-gross', [card('alder')], { players })
    expect(lines[0]).toMatchObject({ total: 72, overPar: 0, isFinished: true })
    expect(strokes[0]?.strokes).toBe(0)
  })
})

describe('Stableford', () => {
  it('gives no points for a pick-up, a hole not played and a blank, and is no worse for it', () => {
    const { lines } = totals('stableford', [card('alder', { 1: 'picked-up', 2: 'not-played', 3: null })])
    expect(lines[0]).toMatchObject({ total: 30, through: 17, isNoReturn: false, isFinished: false, place: 1 })
  })
})

describe('two scores', () => {
  const both = [card('alder'), { ...card('alder', { 1: 7 }), record: 'marker' }]

  it('count nowhere and are marked', () => {
    const [line] = totals('stroke-play-gross', both).lines
    expect(line).toMatchObject({ total: 68, overPar: 0, isFinished: false, unsettled: [{ hole: 1, lap: 1 }] })
    expect(line?.holes[0]).toMatchObject({ kind: 'two', values: [4, 7] })
  })

  it('leave a hole of a match open with both outcomes', () => {
    const line = match('singles-match', [['alder'], ['birch']], [...both, card('birch', { 1: 5 })])
    expect(line.holes[0]).toMatchObject({ result: null, outcomes: [1, -1] })
    expect(line.unsettled).toEqual([{ hole: 1, lap: 1 }])
    expect(line).toMatchObject({ text: 'all square', holesPlayed: 17, toPlay: 1, isFinished: false })
  })

  it('of a ball that is not the better one leave the side its value, and the mark', () => {
    const sides = [
      ['alder', 'cedar'],
      ['birch', 'rowan'],
    ]
    const scores = [...both, card('cedar', { 1: 3 }), card('birch'), card('rowan')]
    const line = match('four-ball-match', sides, scores)
    expect(line.holes[0]).toMatchObject({ result: 1, outcomes: [] })
    expect(line.unsettled).toEqual([{ hole: 1, lap: 1 }])
  })
})

// Rules of Golf 2023, rules 3.2 and 23.2a; no ball holed on either side is halved by clarification 23.2a/1.
describe('a hole of a match', () => {
  it.each([
    ['picked-up', 4, -1],
    [4, 'picked-up', 1],
    ['picked-up', 'picked-up', 0],
    ['not-played', 'picked-up', 0],
    [null, 4, null],
    [3, 4, 1],
  ] as const)('%s against %s is %s', (own, other, expected) => {
    const line = match(
      'singles-match',
      [['alder'], ['birch']],
      [card('alder', { 1: own }), card('birch', { 1: other })],
    )
    expect(line.holes[0]?.result).toBe(expected)
  })

  it("is a four-ball side's by one ball alone, and lost when neither partner is in", () => {
    const sides = [
      ['alder', 'cedar'],
      ['birch', 'rowan'],
    ]
    const scores = [
      card('alder', { 1: 'picked-up', 2: 'picked-up' }),
      card('cedar', { 1: 4, 2: 'picked-up' }),
      card('birch', { 1: 5, 2: 9 }),
      card('rowan', { 1: 5, 2: 'picked-up' }),
    ]
    expect(
      match('four-ball-match', sides, scores)
        .holes.slice(0, 2)
        .map(({ result }) => result),
    ).toEqual([1, -1])
  })

  it('waits for the partner who may still hole', () => {
    const sides = [
      ['alder', 'cedar'],
      ['birch', 'rowan'],
    ]
    const scores = [card('alder', { 1: 'picked-up' }, 0), card('birch', {}, 1), card('rowan', {}, 1)]
    expect(match('four-ball-match', sides, scores).holes[0]?.result).toBeNull()
  })
})

describe('where a match stands', () => {
  const won = (holes: number, through: number) =>
    match(
      'singles-match',
      [['alder'], ['birch']],
      [
        card('alder', Object.fromEntries(pars.slice(0, holes).map((par, place) => [place + 1, par - 1])), through),
        card('birch', {}, through),
      ],
    )

  it.each([
    [0, 5, 'all square'],
    [2, 5, '2 up'],
    [3, 16, '3 & 2'],
    [1, 18, '1 up'],
    [0, 18, 'halved'],
  ])('%i holes won through %i is %s', (holes, through, text) => {
    expect(won(holes, through).text).toBe(text)
  })

  it('is dormie when as many are left as a side is up', () => {
    expect(won(2, 16)).toMatchObject({ isDormie: true, text: '2 up', isFinished: false })
  })
})

describe('strokes', () => {
  const strokesIn = (
    players: readonly object[],
    format: string,
    sides: readonly (readonly string[])[],
    more: object = {},
  ) => {
    const settled = settledWith({ players, games: game(format, sides, more), main: undefined, scores: [] })
    return settled.games[0]?.kind === 'gap'
      ? settled.games[0].gaps
      : settled.games[0]?.strokes.map(each => each.strokes)
  }
  const withHandicaps = (...handicaps: readonly object[]) =>
    autumnDay.players.map((player, place) => ({ ...player, handicap: handicaps[place] ?? { strokes: 0 } }))

  it('plain strokes are what they are, whatever the allowance', () => {
    expect(
      strokesIn(withHandicaps({ strokes: 9 }, { strokes: 3 }), 'stableford', [['alder'], ['birch']], { allowance: 50 }),
    ).toEqual([9, 3])
  })

  it('plain strokes and playing handicaps together give the difference from the lowest', () => {
    const players = withHandicaps({ strokes: 9 }, { courseHandicap: 10 })
    expect(strokesIn(players, 'singles-match', [['alder'], ['birch']], { allowance: 50 })).toEqual([4, 0])
  })

  it('a match takes the difference by its own method', () => {
    const players = withHandicaps({ courseHandicap: 10 }, { courseHandicap: 5 })
    const sides = [['alder'], ['birch']]
    // 9 - 5 (4.5 goes up), against 90 % of 5.
    expect(strokesIn(players, 'singles-match', sides, { allowance: 90 })).toEqual([4, 0])
    const method = 'difference-of-unrounded-course-handicaps'
    expect(strokesIn(players, 'singles-match', sides, { allowance: 90, matchStrokes: method })).toEqual([5, 0])
  })

  // Slope 113 and rating equal to par make the course handicap the index itself.
  const tee = { id: 'white', name: 'White', ratings: { courseRating: 72, slope: 113, par: 72 } }
  const rated = (more: object = {}) => ({ ...autumnDay.course, tees: [{ ...tee, ...more }] })
  const oneOf = (change: object) =>
    settledWith({ games: game('stableford', [['alder']]), main: undefined, scores: [], ...change })

  it('an index makes a course handicap by the ratings of the tee', () => {
    const settled = oneOf({
      players: withHandicaps({ index: 12.4 }),
      course: rated({ ratings: { courseRating: 71.4, slope: 128, par: 72 } }),
    })
    // 12.4 x 128 / 113 - 0.6
    expect(settled.players[0]?.courseHandicap).toEqual({ unrounded: '13.446018', rounded: 13 })
    expect(gameIn(settled, 'g', 'total').strokes[0]?.strokes).toBe(13)
  })

  it("nine holes take the ratings of the nine they are, and half the index by the game's method", () => {
    const nine = { length: 9, groups: [{ ...autumnDay.groups[0], start: 10 }] }
    const course = rated({ backRatings: { courseRating: 36, slope: 113, par: 36 } })
    const players = withHandicaps({ index: '+1.3' })
    const settled = oneOf({ ...nine, course, players })
    expect(gameIn(settled, 'g', 'total').strokes[0]?.courseHandicap?.unrounded).toBe('-0.65')
    const front = oneOf({ ...nine, course, players, groups: autumnDay.groups })
    expect(gameIn(front, 'g', 'gap').gaps).toEqual([{ code: 'rating missing', ball: 'alder', setting: '' }])
  })

  it.each([
    [{ players: withHandicaps({ index: 10 }) }, 'rating missing'],
    [{ players: [{ id: 'alder', name: 'Alder' }, ...autumnDay.players.slice(1)] }, 'handicap missing'],
    [
      { players: [{ id: 'alder', name: 'Alder', handicap: { index: 10 } }, ...autumnDay.players.slice(1)] },
      'tee missing',
    ],
    [{ games: game('singles-match', [['alder'], ['birch', 'rowan']]) }, 'wrong sides'],
    [{ games: game('singles-match', [['alder'], ['alder']]) }, 'wrong sides'],
    [{ games: game('singles-match', [['alder'], ['birch'], ['rowan']]) }, 'wrong sides'],
  ])('what is missing is named %#', (change, code) => {
    expect(gameIn(oneOf(change), 'g', 'gap').gaps.map(gap => gap.code)).toEqual([code])
  })

  it("one ball's gap leaves the others their lines", () => {
    const players = [{ id: 'alder', name: 'Alder' }, ...autumnDay.players.slice(1)]
    const found = gameIn(oneOf({ players, games: game('stableford', singles) }), 'g', 'total')
    expect(found.lines.map(({ side }) => side[0])).toEqual(['birch', 'cedar', 'rowan'])
    expect(found.gaps).toEqual([{ code: 'handicap missing', ball: 'alder', setting: '' }])
  })

  it("a tee's own stroke index wins over the course's", () => {
    const indexes = Array.from({ length: 18 }, (_, place) => place + 1)
    const settled = oneOf({ course: rated({ indexes }), players: withHandicaps({ strokes: 2 }) })
    const byHole = gameIn(settled, 'g', 'total').strokes[0]?.byHole ?? []
    expect(byHole.filter(({ strokes }) => strokes > 0).map(({ hole }) => hole)).toEqual([1, 2])
  })

  it('fall on the same holes whichever hole the group starts from', () => {
    const from = (start: number) => {
      const settled = oneOf({ groups: [{ ...autumnDay.groups[0], start }], players: withHandicaps({ strokes: 5 }) })
      const byHole = gameIn(settled, 'g', 'total').strokes[0]?.byHole ?? []
      return byHole
        .filter(({ strokes }) => strokes > 0)
        .map(({ hole }) => hole)
        .sort((a, b) => a - b)
    }
    expect(from(14)).toEqual(from(1))
  })
})
