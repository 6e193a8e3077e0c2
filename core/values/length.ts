import { type Fraction, fraction, roundHalfUp, times } from './fraction.ts'

/** What a length on a course is told in. */
export const lengthUnits = ['yards', 'metres'] as const
export type LengthUnit = (typeof lengthUnits)[number]

/** A whole number of yards or metres, in the unit in which a person said it. */
export interface Length {
  readonly amount: number
  readonly unit: LengthUnit
}

/** Exactly 0.9144. Source: international yard and pound agreement, 1959. */
const metresPerYard = fraction(9144, 10_000)

export const metresFromYards = (yards: Fraction): Fraction => times(yards, metresPerYard)

export const yardsFromMetres = (metres: Fraction): Fraction =>
  times(metres, fraction(metresPerYard.denominator, metresPerYard.numerator))

/** How many yards a unit has, not rounded: for a sum that goes on with it. */
export function yardsPerUnit(unit: LengthUnit): number {
  if (unit === 'yards') return 1
  const { numerator, denominator } = yardsFromMetres(fraction(1))
  return numerator / denominator
}

/** The length in whole units; as it was said where the units agree. */
export function amountIn({ amount, unit }: Length, wanted: LengthUnit): number {
  if (unit === wanted) return amount
  return roundHalfUp(wanted === 'metres' ? metresFromYards(fraction(amount)) : yardsFromMetres(fraction(amount)))
}
