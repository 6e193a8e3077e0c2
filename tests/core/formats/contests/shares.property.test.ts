import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import type { FormatName } from '#core/formats/format-names.ts'
import { plus, toNumber, zero } from '#core/values/fraction.ts'
import { type PlayedGame, resultOf } from '#tests/kit/played-game.ts'
import { holds, same } from '#tests/kit/property.ts'
import { anyOpenRound, anyWholeRound, fourIds, type RandomRound, settledAs, through } from '#tests/kit/random-games.ts'

type Ids = readonly string[]

const play = (format: FormatName, ids: Ids, round: RandomRound, more: Partial<PlayedGame> = {}) =>
  resultOf('shares', { format, sides: ids.map(id => [id]), ...round, ...more })

type Result = ReturnType<typeof play>

const totalOf = (result: Result, id: string): number =>
  toNumber(result.lines.find(({ side }) => side[0] === id)?.total ?? zero)

const sharesOf = (result: Result) => result.holes.map(({ shares }) => shares?.map(toNumber) ?? null)

const three = fourIds.slice(0, 3)
const games: readonly (readonly [string, FormatName, Ids, Partial<PlayedGame>])[] = [
  ['skins that carry', 'skins', fourIds, {}],
  ['skins that do not carry', 'skins', fourIds, { methods: { skins: 'no-carry-over' } }],
  ['gross skins', 'skins-gross', fourIds, {}],
  ['nine points', 'nine-points', three, {}],
  ['split sixes', 'split-sixes', three, {}],
]

const runs = 500

describe.each(games)('%s', (name, format, ids, more) => {
  holds(
    `${name}: the players in another order have the same`,
    fc.tuple(anyOpenRound, fc.shuffledSubarray([...ids], { minLength: ids.length })),
    ([round, order]) => {
      const result = play(format, ids, round, more)
      const shuffled = play(format, order, round, more)
      same(
        order.map(id => totalOf(shuffled, id)),
        order.map(id => totalOf(result, id)),
      )
      const place = (of: Result, id: string) => of.lines.find(({ side }) => side[0] === id)?.place
      same(
        order.map(id => place(shuffled, id)),
        order.map(id => place(result, id)),
      )
    },
    runs,
  )

  holds(
    `${name}: a later hole changes no earlier one`,
    fc.tuple(anyOpenRound, fc.integer({ min: 0, max: 17 })),
    ([round, holes]) => {
      const whole = play(format, ids, round, more)
      same(play(format, ids, through(round, holes), more).holes.slice(0, holes), whole.holes.slice(0, holes))
    },
    runs,
  )

  holds(
    `${name}: what is shared while holes are open stays so, whichever way they go`,
    fc.tuple(anyOpenRound, fc.constantFrom<0 | 1>(0, 1), fc.constantFrom(2, 7, 'picked-up' as const)),
    ([round, choice, blank]) => {
      const settled = sharesOf(play(format, ids, settledAs(round, choice, blank), more))
      for (const [place, shares] of sharesOf(play(format, ids, round, more)).entries()) {
        if (shares !== null) same(settled[place], shares)
      }
    },
    runs,
  )
})

describe('everything that lies on the holes is accounted for', () => {
  for (const [name, format, ids, more] of games.slice(0, 3)) {
    holds(
      `${name}: won, carried and unclaimed are a skin a hole`,
      fc.tuple(anyWholeRound, fc.integer({ min: 0, max: 18 })),
      ([round, holes]) => {
        const result = play(format, ids, through(round, holes), more)
        const won = ids.reduce((sum, id) => sum + totalOf(result, id), 0)
        expect(won + (result.carried ?? Number.NaN) + result.unclaimed).toBe(Math.min(holes, round.round.length))
      },
      runs,
    )
  }

  for (const [name, format, ids] of games.slice(3)) {
    holds(
      `${name}: every hole gives all its points`,
      anyWholeRound,
      round => {
        const { holes, isFinished } = play(format, ids, round)
        expect(isFinished).toBe(true)
        for (const { shares, pot } of holes) expect(toNumber((shares ?? []).reduce(plus, zero))).toBe(pot)
      },
      runs,
    )
  }
})
