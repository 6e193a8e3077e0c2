import { type Fraction, fraction, plus, zero } from '#core/values/fraction.ts'

/** Three matches of six holes: the pairs, by position among the four players, so that each partners each other once. */
export const sixHolePairs = [
  [
    [0, 1],
    [2, 3],
  ],
  [
    [0, 2],
    [1, 3],
  ],
  [
    [0, 3],
    [1, 2],
  ],
] as const

/**
 * What each of the four players makes of the sixes played, by the results of the first pair of each: one for a match won,
 * a half for one halved. Common practice; no body publishes it.
 */
export function sixHoleTotals(results: readonly (1 | 0 | -1)[]): Fraction[] {
  const won = (player: number): Fraction =>
    results
      .map((result, six) => shareOf(result, sixHolePairs[six]?.[0].some(each => each === player) ?? false))
      .reduce(plus, zero)
  return [0, 1, 2, 3].map(won)
}

/** A win of the first pair is 1 for its players and 0 for the others. */
const shareOf = (firstPairResult: 1 | 0 | -1, isInFirstPair: boolean): Fraction =>
  fraction(1 + (isInFirstPair ? firstPairResult : -firstPairResult), 2)
