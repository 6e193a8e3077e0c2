import { type Fraction, fraction } from '#core/values/fraction.ts'

/** The Slope Rating that strokes are scaled by. Source: Rules of Handicapping, rules 5.1 and 6.1; R&A and USGA; 2020 and 2024. */
export const standardSlope = 113

const lowestSlope = 55
const highestSlope = 155

/** Whether a Slope Rating can exist: a whole number from 55 to 155. Source: course rating page of a USGA association. */
export const isSlope = (slope: number): boolean =>
  Number.isInteger(slope) && slope >= lowestSlope && slope <= highestSlope

export const ratedGenders = ['men', 'women'] as const
export type RatedGender = (typeof ratedGenders)[number]

/** Thousandths of slope for each stroke between the ratings. */
export const slopeThousandthsPerStroke: Readonly<Record<RatedGender, number>> = { men: 5381, women: 4240 }

/**
 * Slope Rating unrounded: (Bogey Rating - Course Rating) x 5.381 for men, x 4.24 for women. Ratings are in tenths.
 * Source: club page on course rating, second-hand.
 */
export const slopeFromRatings = (
  gender: RatedGender,
  bogeyRatingTenths: number,
  courseRatingTenths: number,
): Fraction => fraction((bogeyRatingTenths - courseRatingTenths) * slopeThousandthsPerStroke[gender], 10_000)
