import { type Fraction, fraction, times } from './fraction.ts'

/** Exactly 0.9144. Source: international yard and pound agreement, 1959. */
const metresPerYard = fraction(9144, 10_000)

export const metresFromYards = (yards: Fraction): Fraction => times(yards, metresPerYard)

export const yardsFromMetres = (metres: Fraction): Fraction =>
  times(metres, fraction(metresPerYard.denominator, metresPerYard.numerator))
