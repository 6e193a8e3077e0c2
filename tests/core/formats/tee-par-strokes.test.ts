import { describe, expect, it } from 'vitest'
import { autumnDay, gameIn, settledWith } from '#tests/kit/plain-outing.ts'
import { pars } from '#tests/kit/total-games.ts'

/** The first hole is a par five from the back tee: 73 against 72. */
const course = {
  ...autumnDay.course,
  tees: [
    { id: 'back', name: 'Back', pars: [5, ...pars.slice(1)] },
    { id: 'white', name: 'White' },
  ],
}
const players = (...handicaps: number[]) =>
  autumnDay.players.map((player, place) => ({
    ...player,
    tee: place === 0 ? 'back' : 'white',
    handicap: { courseHandicap: handicaps[place] ?? 0 },
  }))

const strokesIn = (
  format: string,
  sides: readonly (readonly string[])[],
  handicaps: number[],
  methods: object = {},
) => {
  const games = [{ id: 'g', format, sides, ...methods }]
  const settled = settledWith({ course, players: players(...handicaps), games, main: undefined, scores: [] })
  return gameIn(settled, 'g', 'match').strokes.map(({ strokes, forTeePar }) => [strokes, forTeePar])
}

// Rules of Handicapping, rule 6.2b: matches are among the forms in which the difference in par is added.
describe('a match across tees of different par', () => {
  const singles = [['alder'], ['birch']]

  it.each([
    [
      [10, 10],
      [1, 0],
    ],
    [
      [10, 12],
      [0, 1],
    ],
    [
      [10, 11],
      [0, 0],
    ],
    [
      [14, 4],
      [11, 0],
    ],
  ])('course handicaps %j make strokes %j, the lowest off none', (handicaps, expected) => {
    expect(strokesIn('singles-match', singles, handicaps).map(([strokes]) => strokes)).toEqual(expected)
  })

  it.each(['difference-of-unrounded-course-handicaps', 'difference-of-rounded-course-handicaps'])(
    'adds it after the allowance by %s too',
    matchStrokes => {
      // 90 per cent of ten is nine, and one.
      expect(strokesIn('singles-match', singles, [14, 4], { matchStrokes, allowance: 90 })[0]).toEqual([10, 1])
    },
  )

  it('takes the lowest of four balls after the addition', () => {
    const sides = [
      ['alder', 'birch'],
      ['cedar', 'rowan'],
    ]
    expect(strokesIn('four-ball-match', sides, [4, 4, 6, 10], { allowance: 100 })).toEqual([
      [1, 1],
      [0, 0],
      [2, 0],
      [6, 0],
    ])
  })
})
