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

/** Whom a player partners in each six, by position: the order of the four decides the order of partners. */
export const sixHolePartners = (player: number): readonly number[] =>
  sixHolePairs.flatMap(pairs =>
    pairs.flatMap(pair => (pair.some(each => each === player) ? pair.filter(each => each !== player) : [])),
  )

/** What each of the four players makes of one six, by its place and the result of its first pair: one, or a half. */
export const sixHoleShares = (six: number, firstPairResult: 1 | 0 | -1): Fraction[] =>
  [0, 1, 2, 3].map(player => {
    const isInFirstPair = sixHolePairs[six]?.[0].some(each => each === player) ?? false
    return fraction(1 + (isInFirstPair ? firstPairResult : -firstPairResult), 2)
  })

/**
 * What each of the four players makes of the sixes played, by the results of the first pair of each: one for a match won,
 * a half for one halved. Common practice; no body publishes it.
 */
export const sixHoleTotals = (results: readonly (1 | 0 | -1)[]): Fraction[] =>
  results.reduce<Fraction[]>(
    (totals, result, six) => {
      const shares = sixHoleShares(six, result)
      return totals.map((total, player) => plus(total, shares[player] ?? zero))
    },
    [zero, zero, zero, zero],
  )
