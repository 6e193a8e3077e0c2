import { unreachable } from '#core/values/assert.ts'
import { type Fraction, fraction, percentOf, roundHalfUp } from '#core/values/fraction.ts'

/** Whether the Course Handicap is a whole number before the allowance is taken; bodies differ. */
export const allowanceRoundings = ['course-handicap-unrounded', 'course-handicap-rounded-first'] as const
export type AllowanceRounding = (typeof allowanceRoundings)[number]

/** The allowance of a Course Handicap, before it is rounded to whole strokes. The percentage is whole. */
export function allowanceTaken(
  courseHandicap: Fraction,
  allowancePercent: number,
  rounding: AllowanceRounding,
): Fraction {
  switch (rounding) {
    case 'course-handicap-unrounded':
      return percentOf(courseHandicap, allowancePercent)
    case 'course-handicap-rounded-first':
      return percentOf(fraction(roundHalfUp(courseHandicap)), allowancePercent)
    default:
      return unreachable(rounding)
  }
}

/**
 * Playing Handicap in whole strokes: the allowance of the Course Handicap, a half upward, so that a plus player moves up
 * towards zero. The percentage is whole.
 * Source, unrounded: Rules of Handicapping, rule 6.2a and Appendix C; R&A and USGA; 2024. Rounded first: as adopted in
 * England, Ireland and Wales from November 2020 to March 2024.
 */
export const playingHandicap = (
  courseHandicap: Fraction,
  allowancePercent: number,
  rounding: AllowanceRounding,
): number => roundHalfUp(allowanceTaken(courseHandicap, allowancePercent, rounding))
