import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { MatchHoleResult, MatchLine } from '#core/formats/game-result.ts'
import { type PlayedGame, resultOf } from '#tests/kit/played-game.ts'
import { holds, same } from '#tests/kit/property.ts'
import { anyOpenRound, anyWholeRound, type RandomRound, settledAs, through } from '#tests/kit/random-games.ts'

type Sides = PlayedGame['sides']

const pairs: Sides = [
  ['alder', 'cedar'],
  ['birch', 'rowan'],
]
const games: readonly (readonly [FormatName, Sides])[] = [
  ['singles-match', [['alder'], ['birch']]],
  ['four-ball-match', pairs],
  ['total-of-two-match', pairs],
  ['three-ball-match', [['alder'], ['birch'], ['cedar']]],
  ['three-ball-match-from-lowest', [['alder'], ['birch'], ['cedar']]],
  ['best-ball-match', [['alder'], ['birch', 'cedar', 'rowan']]],
  ['foursomes-match', [['alder'], ['birch']]],
  ['greensomes-match', [['alder'], ['birch']]],
  ['chapman-match', [['alder'], ['birch']]],
]

/** One ball of two has partners of its own handicap and the next one's. */
function play(format: FormatName, sides: Sides, { round, handicaps, scores }: RandomRound): readonly MatchLine[] {
  const isOneBall = /foursomes|greensomes|chapman/.test(format)
  const partners = Object.fromEntries(Object.entries(handicaps).map(([id, each]) => [id, [each, 36 - each]]))
  return resultOf('match', { format, sides, round, scores, handicaps: isOneBall ? partners : handicaps }).matches
}

const mirrored = (result: MatchHoleResult): MatchHoleResult => {
  if (result === null) return null
  if (typeof result === 'number') return (0 - result) as 1 | 0 | -1
  return { two: result.two.map(each => (0 - each) as 1 | 0 | -1).sort((a, b) => b - a) }
}

const runs = 400

describe.each(games)('%s', (format, sides) => {
  holds(
    `${format}: the other way round is its mirror image`,
    anyOpenRound,
    round => {
      const key = (line: MatchLine) =>
        line.sides
          .map(side => side.join())
          .sort()
          .join()
      const back = new Map(play(format, [...sides].reverse(), round).map(line => [key(line), line]))
      for (const line of play(format, sides, round)) {
        const other = back.get(key(line))
        same(
          other?.holes.map(({ result }) => result),
          line.holes.map(({ result }) => mirrored(result)),
        )
        const winner = { A: 'B', B: 'A' } as const
        expect(other?.state.winner).toBe(line.state.winner && winner[line.state.winner])
      }
    },
    runs,
  )

  holds(
    `${format}: a later hole changes no earlier one`,
    fc.tuple(anyOpenRound, fc.integer({ min: 0, max: 17 })),
    ([round, holes]) => {
      const whole = play(format, sides, round)
      for (const [place, line] of play(format, sides, through(round, holes)).entries()) {
        same(line.holes.slice(0, holes), whole[place]?.holes.slice(0, holes))
        if (line.state.winner !== null) expect(whole[place]?.state.winner).toBe(line.state.winner)
      }
    },
    runs,
  )

  holds(
    `${format}: is over exactly when the lead exceeds what is left`,
    anyWholeRound,
    round => {
      for (const { holes, state } of play(format, sides, round)) {
        let up = 0
        let played = 0
        for (const { result } of holes) {
          up += Number(result)
          played += 1
          if (Math.abs(up) > holes.length - played) break
        }
        same([state.lead, state.toPlay, state.result !== null], [Math.abs(up), holes.length - played, true])
        expect(state.winner).toBe(up === 0 ? null : up > 0 ? 'A' : 'B')
      }
    },
    runs,
  )

  holds(
    `${format}: a hole goes the same wherever the round starts`,
    anyWholeRound,
    round => {
      const length = round.round.length as 9 | 18
      const order = roundFrom(1, length)
      const place = (hole: number) => round.round.findIndex(each => each.hole === hole)
      const scores = Object.fromEntries(
        Object.entries(round.scores).map(([id, own]) => [id, order.map(({ hole }) => own[place(hole)] ?? null)]),
      )
      const byHole = (lines: readonly MatchLine[]) =>
        lines.map(({ holes }) =>
          holes.map(({ key, result }) => `${key.split('/')[0]} ${JSON.stringify(result)}`).sort(),
        )
      same(byHole(play(format, sides, { ...round, round: order, scores })), byHole(play(format, sides, round)))
    },
    runs,
  )
})

// A side of several may still better a score that it has; a ball alone has what it has.
describe.each(games.filter(([, sides]) => sides.every(side => side.length === 1)))('%s', (format, sides) => {
  holds(
    `${format}: a winner named while holes are open stays the winner`,
    fc.tuple(anyOpenRound, fc.constantFrom<0 | 1>(0, 1), fc.constantFrom(2, 7, 'picked-up' as const)),
    ([round, choice, blank]) => {
      const settled = play(format, sides, settledAs(round, choice, blank))
      for (const [place, { state }] of play(format, sides, round).entries()) {
        if (state.winner !== null) expect(settled[place]?.state.winner).toBe(state.winner)
      }
    },
    runs,
  )
})
