import { unreachable } from '#core/values/assert.ts'
import { compareFractions, type Fraction, fraction, minus, percentOf, roundHalfUp } from '#core/values/fraction.ts'
import { playingHandicap } from './playing-handicap.ts'

/** The three published orders of allowance, rounding and difference from the lowest. */
export const matchStrokesMethods = [
  'from-lowest-playing-handicap',
  'difference-of-unrounded-course-handicaps',
  'difference-of-rounded-course-handicaps',
] as const
export type MatchStrokesMethod = (typeof matchStrokesMethods)[number]

/**
 * Strokes that each player of a match receives, in the order given: the lowest plays off zero, nobody gives any back.
 * Source, from the lowest Playing Handicap: Rules of Handicapping, Appendix C; R&A and USGA; 2020 and 2024.
 * Difference of unrounded Course Handicaps: guidance for Great Britain and Ireland, April 2024, seen second-hand.
 * Difference of rounded Course Handicaps: club and county sheets, April 2024, seen second-hand.
 */
export function matchStrokes(
  method: MatchStrokesMethod,
  courseHandicaps: readonly Fraction[],
  allowancePercent: number,
): number[] {
  switch (method) {
    case 'from-lowest-playing-handicap': {
      const whole = courseHandicaps.map(each => playingHandicap(each, allowancePercent, 'course-handicap-unrounded'))
      const lowest = Math.min(...whole)
      return whole.map(each => each - lowest)
    }
    case 'difference-of-unrounded-course-handicaps':
      return shareOfDifference(courseHandicaps, allowancePercent)
    case 'difference-of-rounded-course-handicaps':
      return shareOfDifference(
        courseHandicaps.map(each => fraction(roundHalfUp(each))),
        allowancePercent,
      )
    default:
      return unreachable(method)
  }
}

function shareOfDifference(handicaps: readonly Fraction[], allowancePercent: number): number[] {
  const [first, ...others] = handicaps
  if (first === undefined) return []
  const lowest = others.reduce((least, each) => (compareFractions(each, least) < 0 ? each : least), first)
  return handicaps.map(each => roundHalfUp(percentOf(minus(each, lowest), allowancePercent)))
}
