import { type Fraction, fraction, minus, plus, roundTo, times } from '#core/values/fraction.ts'
import type { PlayingConditions } from './playing-conditions.ts'
import { standardSlope } from './slope.ts'

/** A score to be made comparable. */
export interface RatedScore {
  readonly adjustedGross: number
  readonly courseRatingTenths: number
  readonly slope: number
  /** Of the day, for eighteen holes. */
  readonly playingConditions: PlayingConditions
}

function differential({ adjustedGross, courseRatingTenths, slope }: RatedScore, conditions: Fraction): Fraction {
  const overRating = minus(fraction(10 * adjustedGross - courseRatingTenths, 10), conditions)
  return times(overRating, fraction(standardSlope, slope))
}

/**
 * Score Differential over eighteen holes, unrounded: 113 / Slope x (adjusted gross - Course Rating - playing conditions).
 * Source: Rules of Handicapping, rule 5.1a; USGA; 2020 and 2024.
 */
export const scoreDifferential18 = (score: RatedScore): Fraction =>
  differential(score, fraction(score.playingConditions))

/**
 * Score Differential over the nine holes rated, unrounded, with half of the playing conditions.
 * Source: Rules of Handicapping, rule 5.1b; USGA; 2020 and 2024.
 */
export const scoreDifferential9 = (score: RatedScore): Fraction =>
  differential(score, fraction(score.playingConditions, 2))

/**
 * A differential to a tenth, in tenths: a half goes upward, for a plus differential towards zero.
 * Source: Rules of Handicapping, rule 5.1c; USGA; 2020 and 2024.
 */
export const differentialTenths = (unrounded: Fraction): number => roundTo(unrounded, 10)

/**
 * One differential out of two nine-hole scores, unrounded: neither nine is rounded before the sum.
 * Source: Rules of Handicapping, rule 5.1b; USGA; 2020.
 */
export const combineTwoNines = (first: RatedScore, second: RatedScore): Fraction =>
  plus(scoreDifferential9(first), scoreDifferential9(second))

/**
 * One differential out of the holes played and an expected differential for the rest, unrounded. The expected one is what
 * the association's table gives for the player's Index; that table is not public, so it goes in and is never worked out.
 * Source: Rules of Handicapping, rules 3.2 and 5.1b; USGA; 2024.
 */
export const combineWithExpected = (played: Fraction, expected: Fraction): Fraction => plus(played, expected)

/** A Stableford round to be made comparable. */
export interface RatedStableford {
  /** Off the full Course Handicap; points off an allowance must be counted again first. */
  readonly points: number
  readonly par: number
  /** Whole. */
  readonly courseHandicap: number
  readonly courseRatingTenths: number
  readonly slope: number
  readonly playingConditions: PlayingConditions
}

const pointsToHandicap = 36

/**
 * Score Differential out of Stableford points, unrounded, with par + Course Handicap - (points - 36) for the adjusted
 * gross score.
 * Source: Rules of Handicapping, rule 5.1a; Danish union, 2021; the formula is from memory.
 */
export const scoreDifferentialStableford = ({ points, par, courseHandicap, ...rated }: RatedStableford): Fraction =>
  scoreDifferential18({ ...rated, adjustedGross: par + courseHandicap - (points - pointsToHandicap) })
