import * as fc from 'fast-check'
import { roundFrom } from '#core/card/order-of-play.ts'
import type { PlayedHole } from '#core/card/score.ts'
import type { Written } from './played-game.ts'

/** Four balls over nine or eighteen holes from any start. */
export interface RandomRound {
  readonly round: readonly PlayedHole[]
  readonly handicaps: Readonly<Record<string, number>>
  /** In order of play. */
  readonly scores: Readonly<Record<string, readonly Written[]>>
}

export const fourIds = ['alder', 'birch', 'cedar', 'rowan'] as const

const anyScore: fc.Arbitrary<Written> = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 2, max: 7 }) },
  { weight: 1, arbitrary: fc.constant('picked-up' as const) },
)
const anyOpenScore: fc.Arbitrary<Written> = fc.oneof(
  { weight: 8, arbitrary: anyScore },
  { weight: 1, arbitrary: fc.constant(null) },
  { weight: 1, arbitrary: fc.constantFrom<Written>([3, 5], [4, 'picked-up'], [4, 5]) },
)

const roundOf = (score: fc.Arbitrary<Written>): fc.Arbitrary<RandomRound> =>
  fc
    .record({
      length: fc.constantFrom<9 | 18>(9, 18),
      start: fc.integer({ min: 1, max: 18 }),
      handicaps: fc.array(fc.integer({ min: -3, max: 36 }), { minLength: 4, maxLength: 4 }),
      scores: fc.array(fc.array(score, { minLength: 18, maxLength: 18 }), { minLength: 4, maxLength: 4 }),
    })
    .map(({ length, start, handicaps, scores }) => ({
      round: roundFrom(((start - 1) % length) + 1, length),
      handicaps: Object.fromEntries(fourIds.map((id, at) => [id, handicaps[at] ?? 0])),
      scores: Object.fromEntries(fourIds.map((id, at) => [id, scores[at]?.slice(0, length) ?? []])),
    }))

/** Every hole written once. */
export const anyWholeRound = roundOf(anyScore)

/** With blanks, and with two scores here and there. */
export const anyOpenRound = roundOf(anyOpenScore)

/** The round as it stood after so many holes. */
export const through = (round: RandomRound, holes: number): RandomRound => ({
  ...round,
  scores: Object.fromEntries(Object.entries(round.scores).map(([id, scores]) => [id, scores.slice(0, holes)])),
})

/** One way in which an open round may go: the first or the second of two scores, and this score for every blank. */
export const settledAs = (round: RandomRound, choice: 0 | 1, blank: Written): RandomRound => ({
  ...round,
  scores: Object.fromEntries(
    Object.entries(round.scores).map(([id, scores]) => [
      id,
      scores.map(score => (Array.isArray(score) ? (score[choice] ?? null) : (score ?? blank))),
    ]),
  ),
})
