import { compareFractions, type Fraction, fraction, roundHalfUp } from '#core/values/fraction.ts'
import { capIndex } from './handicap-index.ts'

export const indexCaps = ['none', 'soft', 'hard'] as const
export type IndexCap = (typeof indexCaps)[number]

export interface CappedIndex {
  readonly cap: IndexCap
  /** In tenths, before rounding and before the maximum of 54.0. */
  readonly unroundedTenths: Fraction
  readonly indexTenths: number
}

const softFromTenths = 30
const hardAtTenths = 50

/**
 * Holds an Index, already to a tenth, against the Low Index: of a rise of more than 3.0 half the excess counts, and no
 * rise exceeds 5.0. No Low Index, no cap; nothing limits the way down. The maximum of 54.0 comes last. A committee may
 * set either cap aside.
 * Source: Rules of Handicapping, rule 5.8; USGA; 2020 and 2024.
 */
export function capRise(calculatedTenths: number, lowTenths: number | null): CappedIndex {
  if (lowTenths === null || calculatedTenths <= lowTenths + softFromTenths) {
    return capped('none', fraction(calculatedTenths))
  }
  const soft = fraction(calculatedTenths + lowTenths + softFromTenths, 2)
  const hard = fraction(lowTenths + hardAtTenths)
  return compareFractions(soft, hard) > 0 ? capped('hard', hard) : capped('soft', soft)
}

const capped = (cap: IndexCap, unroundedTenths: Fraction): CappedIndex => ({
  cap,
  unroundedTenths,
  indexTenths: capIndex(roundHalfUp(unroundedTenths)),
})
