import { type Fraction, fraction, plus, roundHalfUp } from '#core/values/fraction.ts'
import { standardSlope } from './slope.ts'

/** What a tee is rated at for one gender: over the eighteen holes, or over the nine played. */
export interface Ratings {
  /** Strokes in whole tenths: 714 is a Course Rating of 71.4. */
  readonly courseRatingTenths: number
  /** 55 to 155; 113 is standard. */
  readonly slope: number
  readonly par: number
}

/** What becomes of half the Handicap Index over nine holes before the slope is applied; bodies differ. */
export const halfIndexMethods = ['half-index-unrounded', 'half-index-to-tenth'] as const
export type HalfIndexMethod = (typeof halfIndexMethods)[number]

/** Whether a Course Handicap holds Course Rating minus par; by time and territory. */
export const courseHandicapMethods = ['with-rating-minus-par', 'without-rating-minus-par'] as const
export type CourseHandicapMethod = (typeof courseHandicapMethods)[number]

const scaledBySlope = ({ numerator, denominator }: Fraction, slope: number): Fraction =>
  fraction(numerator * slope, denominator * standardSlope * 10)

const courseHandicap = (indexTenths: Fraction, { courseRatingTenths, slope, par }: Ratings): Fraction =>
  plus(scaledBySlope(indexTenths, slope), fraction(courseRatingTenths - 10 * par, 10))

const halfOf = (indexTenths: number, halfIndex: HalfIndexMethod): Fraction => {
  const half = fraction(indexTenths, 2)
  return halfIndex === 'half-index-to-tenth' ? fraction(roundHalfUp(half)) : half
}

/**
 * Course Handicap over 18 holes, unrounded: Index x Slope / 113 + (Course Rating - par).
 * The Index is in tenths; a plus handicap is negative, going in and coming out.
 * Source: Rules of Handicapping, rule 6.1a; R&A and USGA; 2020 and 2024 (in Great Britain and Ireland from April 2024).
 */
export const courseHandicap18 = (indexTenths: number, ratings: Ratings): Fraction =>
  courseHandicap(fraction(indexTenths), ratings)

/**
 * Course Handicap over the nine holes played, unrounded: half the Index x Slope / 113 + (Course Rating - par), with the
 * ratings of those nine. The Index is in tenths; a plus handicap is negative.
 * Source: Rules of Handicapping, rule 6.1b; R&A and USGA; 2020 and 2024. The half to a tenth: USGA, Local Guidance to
 * Rule 6, 2024; that a plus half also goes half upward is this product's reading, as the guidance has no such example.
 */
export const courseHandicap9 = (indexTenths: number, ratings9: Ratings, halfIndex: HalfIndexMethod): Fraction =>
  courseHandicap(halfOf(indexTenths, halfIndex), ratings9)

/**
 * Course Handicap over eighteen holes made of the same nine twice where no eighteen-hole rating exists, unrounded:
 * Index x Slope of the nine / 113 + (2 x Course Rating of the nine - 2 x its par). The Index is in tenths.
 * Source: Rules of Handicapping, rule 6.1; R&A and USGA; 2024. That such a formula exists was read second-hand; the
 * formula itself is from memory.
 */
export const courseHandicapSameNineTwice = (indexTenths: number, nine: Ratings): Fraction =>
  courseHandicap18(indexTenths, ratingsTwice(nine))

/** The ratings of eighteen holes that are the same nine twice. */
export const ratingsTwice = ({ courseRatingTenths, slope, par }: Ratings): Ratings => ({
  courseRatingTenths: 2 * courseRatingTenths,
  slope,
  par: 2 * par,
})

/**
 * Course Handicap over 18 holes without rating minus par, unrounded: Index x Slope / 113. The Index is in tenths.
 * Source: Great Britain and Ireland, November 2020 to March 2024, second-hand from a county association's summary of the
 * change.
 */
export const courseHandicap18WithoutRatingMinusPar = (indexTenths: number, slope: number): Fraction =>
  scaledBySlope(fraction(indexTenths), slope)

/**
 * The same over the nine holes played, unrounded: half the Index x Slope of the nine / 113.
 * Source: Great Britain and Ireland, November 2020 to March 2024; that the nine was counted like the eighteen is from memory.
 */
export const courseHandicap9WithoutRatingMinusPar = (
  indexTenths: number,
  slope9: number,
  halfIndex: HalfIndexMethod,
): Fraction => scaledBySlope(halfOf(indexTenths, halfIndex), slope9)
