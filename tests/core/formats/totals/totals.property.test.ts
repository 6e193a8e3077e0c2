import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import type { MaximumScore } from '#core/formats/maximum-score.ts'
import { formatTable } from '#core/formats/table.ts'
import { totalFormats } from '#core/formats/total-formats.ts'
import { type PencilScore, pencilTotals } from '#tests/kit/pencil-totals.ts'
import { type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'
import { holds, same } from '#tests/kit/property.ts'

const formats = Object.keys(totalFormats) as FormatName[]

interface RandomBall {
  readonly handicaps: readonly number[]
  /** By hole of the course from 1. */
  readonly scores: readonly PencilScore[]
}

interface RandomGame {
  readonly format: FormatName
  readonly length: 9 | 18
  readonly start: number
  readonly sides: readonly (readonly RandomBall[])[]
  readonly allowance: number
  readonly counting: readonly number[]
  readonly maximum: MaximumScore
}

const anyScore: fc.Arbitrary<PencilScore> = fc.oneof(
  { weight: 16, arbitrary: fc.integer({ min: 2, max: 8 }) },
  { weight: 1, arbitrary: fc.constantFrom<PencilScore[]>('picked-up', 'not-played', null) },
)

const within = ({ min, max }: { readonly min: number; readonly max: number | null }, most: number) =>
  fc.integer({ min, max: Math.min(max ?? most, most) })

const anyBall = (format: FormatName): fc.Arbitrary<RandomBall> =>
  within(formatTable[format].sides.players, 4).chain(players =>
    fc.record({
      handicaps: fc.array(fc.integer({ min: -4, max: 40 }), { minLength: players, maxLength: players }),
      scores: fc.array(anyScore, { minLength: 18, maxLength: 18 }),
    }),
  )

const anySide = (format: FormatName): fc.Arbitrary<readonly RandomBall[]> =>
  within(formatTable[format].sides.balls, 4).chain(balls =>
    fc.array(anyBall(format), { minLength: balls, maxLength: balls }),
  )

const anyGame: fc.Arbitrary<RandomGame> = fc.constantFrom(...formats).chain(format =>
  fc.record({
    format: fc.constant(format),
    length: fc.constantFrom<(9 | 18)[]>(9, 18),
    start: fc.integer({ min: 1, max: 18 }),
    sides: fc.array(anySide(format), { minLength: 1, maxLength: 3 }),
    allowance: fc.constantFrom(100, 95, 85, 75),
    counting:
      format === 'waltz'
        ? fc.constant([1, 2, 3])
        : fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 3 }),
    maximum: fc.constantFrom<MaximumScore[]>(
      { kind: 'twice-par' },
      { kind: 'net-double-bogey' },
      { kind: 'fixed', strokes: 7 },
    ),
  }),
)

const roundOf = ({ length, start }: RandomGame) => roundFrom(((start - 1) % length) + 1, length)

type Place = readonly [side: number, ball: number]
const nameOf = ([side, ball]: Place): string => `s${side}b${ball}`

/** The game as it is played, sides and balls named by their places; `order` puts the sides otherwise. */
function played(game: RandomGame, isTurned = false): PlayedGame {
  const round = roundOf(game)
  const turn = <T>(list: readonly T[]): readonly T[] => (isTurned ? [...list].reverse() : list)
  const balls = game.sides.flatMap((side, at) => side.map((ball, place) => [nameOf([at, place]), ball] as const))
  const written = ({ scores }: RandomBall): Written[] => round.map(({ hole }) => scores[hole - 1] ?? null)
  return {
    format: game.format,
    sides: turn(game.sides.map((side, at) => turn(side.map((_, place) => nameOf([at, place]))))),
    handicaps: Object.fromEntries(balls.map(([name, { handicaps }]) => [name, handicaps])),
    scores: Object.fromEntries(balls.map(([name, ball]) => [name, written(ball)])),
    round,
    methods: { allowancePercent: game.allowance, countingBalls: game.counting, maximumScore: game.maximum, ties: null },
  }
}

type Total = Extract<GameResult, { readonly kind: 'total' }>

/** Each side's line by the name of the side, with its balls in one order. */
const linesBySide = ({ lines }: Total) =>
  Object.fromEntries(
    lines.map(({ side, byHole, notes, drives: _, ...line }) => [
      [...side].sort().join(),
      {
        ...line,
        byHole: Object.fromEntries(
          [...byHole].map(([key, each]) => [
            key,
            each.kind === 'value' ? { ...each, balls: [...each.balls].sort() } : each,
          ]),
        ),
        notes: Object.fromEntries(
          [...notes].map(([key, each]) => [key, each.map(({ code, ball }) => `${code} ${ball}`).sort()]),
        ),
      },
    ]),
  )

const capOf = (maximum: MaximumScore) => (maximum.kind === 'fixed' ? maximum.strokes : maximum.kind)

describe('a game of totals, of any format, over nine or eighteen holes from any start', () => {
  holds('comes to what a pencil makes of it', anyGame, game => {
    const { lines } = resultOf('total', played(game))
    const round = roundOf(game)
    const expected = pencilTotals({
      format: game.format,
      sides: game.sides.map(side =>
        side.map(({ handicaps, scores }) => ({ handicaps, scores: round.map(({ hole }) => scores[hole - 1] ?? null) })),
      ),
      round,
      allowance: game.allowance,
      counting: game.counting,
      cap: capOf(game.maximum),
    })
    const bySide = new Map<string | undefined, number | null>(lines.map(({ side, total }) => [side[0], total]))
    expect(game.sides.map((_, side) => bySide.get(nameOf([side, 0])))).toEqual(expected)
  })

  holds('is the same in whatever order sides and balls stand', anyGame, game => {
    same(linesBySide(resultOf('total', played(game, true))), linesBySide(resultOf('total', played(game))))
  })

  holds('adds up: the total is its holes, and places go by totals', anyGame, game => {
    const { lines, unit } = resultOf('total', played(game))
    for (const line of lines) {
      const values = [...line.byHole.values()].map(each => (each.kind === 'value' ? each.value : 0))
      if (!line.isNoReturn) expect(line.total).toBe(values.reduce((sum, each) => sum + each, 0))
      expect(line.isNoReturn).toBe(unit === 'strokes' && [...line.byHole.values()].some(({ kind }) => kind === 'none'))
      expect(line.byHole.size).toBe(game.length)
    }
    const placed = lines.filter(({ place }) => place !== null)
    const isRunning = lines.some(({ isFinished, isNoReturn }) => !isFinished && !isNoReturn)
    for (const one of placed) {
      const figure = (line: typeof one) =>
        unit !== 'strokes' ? -(line.total ?? 0) : ((isRunning ? line.overPar : line.total) ?? 0)
      expect(one.place).toBe(1 + placed.filter(other => figure(other) < figure(one)).length)
    }
  })

  const withCut = fc.tuple(anyGame, fc.integer({ min: 0, max: 18 }))
  holds('never changes a hole by a later one', withCut, ([game, cut]) => {
    const whole = played(game)
    const scores = Object.fromEntries(Object.entries(whole.scores).map(([name, each]) => [name, each.slice(0, cut)]))
    const early = linesBySide(resultOf('total', { ...whole, scores }))
    const late = linesBySide(resultOf('total', whole))
    const keys = roundOf(game)
      .slice(0, cut)
      .map(({ hole, lap }) => `${hole}/${lap}`)
    for (const [side, line] of Object.entries(early)) {
      same(
        keys.map(key => line.byHole[key]),
        keys.map(key => late[side]?.byHole[key]),
      )
    }
  })

  const anyStart = fc.tuple(
    anyGame.filter(({ format, counting }) => format !== 'waltz' && new Set(counting).size === 1),
    fc.integer({ min: 1, max: 18 }),
  )
  holds('counts the same from every start where every hole counts alike', anyStart, ([game, start]) => {
    const totals = (each: RandomGame) =>
      Object.entries(linesBySide(resultOf('total', played(each)))).map(([side, { total, overPar, place }]) => [
        side,
        total,
        overPar,
        place,
      ])
    same(totals({ ...game, start }).sort(), totals(game).sort())
  })
})
