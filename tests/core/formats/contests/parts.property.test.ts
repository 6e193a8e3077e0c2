import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import type { FormatName } from '#core/formats/format-names.ts'
import { plus, toNumber, zero } from '#core/values/fraction.ts'
import { type PlayedGame, resultOf } from '#tests/kit/played-game.ts'
import { holds } from '#tests/kit/property.ts'
import { anyOpenRound, anyWholeRound, fourIds, type RandomRound, settledAs, through } from '#tests/kit/random-games.ts'

type Sides = PlayedGame['sides']

const play = (format: FormatName, sides: Sides, round: RandomRound, more: Partial<PlayedGame> = {}) =>
  resultOf('parts', { format, sides, ...round, ...more })

type Result = ReturnType<typeof play>

const totalOf = (result: Result, side: readonly string[]): number =>
  toNumber(result.lines.find(line => line.side.join() === side.join())?.total ?? zero)

const singles: Sides = [['alder'], ['birch']]
const pairs: Sides = [
  ['alder', 'cedar'],
  ['birch', 'rowan'],
]
const each: Sides = fourIds.map(id => [id])
const atTwoDown: Partial<PlayedGame> = { methods: { presses: 'at-two-down' } }

const games: readonly (readonly [string, FormatName, Sides, Partial<PlayedGame>, number])[] = [
  ['Nassau', 'nassau', singles, {}, 1],
  ['Nassau of pairs with presses', 'nassau', pairs, atTwoDown, 1],
  ['sixes', 'sixes', each, {}, 2],
  ['six threes, singles', 'six-threes-match', singles, {}, 1],
  ['six threes, pairs', 'six-threes-match', pairs, {}, 1],
  ['six threes, three players', 'six-threes-match', each.slice(0, 3), {}, 1],
  ['six threes, four players', 'six-threes-match', each, {}, 1],
]

const runs = 500

describe.each(games)('%s', (name, format, sides, more, points) => {
  holds(
    `${name}: every part gives its points, and the whole round is decided`,
    anyWholeRound,
    round => {
      const result = play(format, sides, round, more)
      for (const { shares } of result.parts) expect(toNumber((shares ?? []).reduce(plus, zero))).toBe(points)
      expect(result.isFinished).toBe(true)
      const total = sides.reduce((sum, side) => sum + totalOf(result, side), 0)
      expect(total).toBeCloseTo(points * result.parts.length, 9)
    },
    runs,
  )

  holds(
    `${name}: a part that is decided stays so, whatever is still played`,
    fc.tuple(anyWholeRound, fc.integer({ min: 0, max: 18 })),
    ([round, holes]) => {
      const whole = play(format, sides, round, more).parts
      for (const part of play(format, sides, through(round, holes), more).parts) {
        const same = whole.find(other => other.name === part.name && other.holes[0] === part.holes[0])
        if (part.shares !== null) expect(same?.shares).toEqual(part.shares)
      }
    },
    runs,
  )
})

/** Of four players: those orders that leave everybody's partner in each six what it was. */
const samePartners = [
  [0, 1, 2, 3],
  [1, 0, 3, 2],
  [2, 3, 0, 1],
  [3, 2, 1, 0],
]

describe('another order of the sides', () => {
  const orders: readonly (readonly [string, FormatName, Sides, Partial<PlayedGame>, readonly (readonly number[])[]])[] =
    [
      ['Nassau with presses', 'nassau', singles, atTwoDown, [[1, 0]]],
      ['sixes', 'sixes', each, {}, samePartners],
      ['six threes, pairs', 'six-threes-match', pairs, {}, [[1, 0]]],
      ['six threes, each', 'six-threes-match', each, {}, [...samePartners, [2, 0, 3, 1]]],
    ]
  for (const [name, format, sides, more, ways] of orders) {
    holds(
      `${name}: gives every side the same`,
      fc.tuple(anyOpenRound, fc.constantFrom(...ways)),
      ([round, order]) => {
        const other = order.map(at => sides[at] ?? [])
        const [result, changed] = [play(format, sides, round, more), play(format, other, round, more)]
        expect(sides.map(side => totalOf(changed, side))).toEqual(sides.map(side => totalOf(result, side)))
      },
      runs,
    )
  }
})

describe('parts with open holes', () => {
  for (const [name, format, sides] of [
    ['six threes, singles', 'six-threes-match', singles],
    ['six threes, each', 'six-threes-match', each],
  ] as const) {
    holds(
      `${name}: a three told while scores are open stays so, whichever way they go`,
      fc.tuple(anyOpenRound, fc.constantFrom<0 | 1>(0, 1), fc.constantFrom(1, 2, 7, 'picked-up' as const)),
      ([round, choice, blank]) => {
        const settled = play(format, sides, settledAs(round, choice, blank)).parts
        for (const [place, { shares }] of play(format, sides, round).parts.entries()) {
          if (shares !== null) expect(settled[place]?.shares).toEqual(shares)
        }
      },
      runs,
    )
  }
})

describe('Nassau', () => {
  holds(
    'Nassau: comes to what the plain sum of holes says',
    anyWholeRound,
    round => {
      const result = play('nassau', singles, round)
      if (round.round.length !== 18) return
      const overall = result.parts.find(({ name }) => name === 'overall')
      const holes = (overall?.match?.holes ?? []).map(({ result: hole }) => Number(hole))
      const [front, back] = [holes.slice(0, 9), holes.slice(9)].map(nine => nine.reduce((up, each) => up + each, 0))
      const ups = [front ?? 0, back ?? 0, (front ?? 0) + (back ?? 0)]
      expect(result.parts.map(({ up }) => up)).toEqual(ups)
      expect(totalOf(result, ['alder'])).toBe(ups.reduce((sum, up) => sum + (1 + Math.sign(up)) / 2, 0))
    },
    runs,
  )
})
