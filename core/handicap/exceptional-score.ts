import { unreachable } from '#core/values/assert.ts'
import { compareFractions, type Fraction, fraction, minus, roundTo } from '#core/values/fraction.ts'
import { countedDifferentials } from './handicap-index.ts'

/** Which figure of the differential is held against the Index. */
export const exceptionalMethods = ['differential-unrounded', 'differential-rounded-first'] as const
export type ExceptionalMethod = (typeof exceptionalMethods)[number]

/** The reduction for one exceptional score, in tenths. */
export type Reduction = 0 | -10 | -20

const first = fraction(7)
const second = fraction(10)

/** How far a differential lies below the Index in force when it was played, in strokes; negative above it. */
export const strokesBelowIndex = (indexTenths: number, differential: Fraction): Fraction =>
  minus(fraction(indexTenths, 10), differential)

/**
 * Reduction for an exceptional score: 1.0 for a differential at least 7.0 below the Index in force when it was played,
 * 2.0 for at least 10.0 below.
 * Source: Rules of Handicapping, rule 5.9; R&A and USGA, and Danish union; 2020 and 2024. The current text takes the
 * unrounded differential; rounding it first is an older reading.
 */
export function exceptionalReduction(
  method: ExceptionalMethod,
  indexTenths: number,
  differential: Fraction,
): Reduction {
  switch (method) {
    case 'differential-unrounded':
      return reductionFor(strokesBelowIndex(indexTenths, differential))
    case 'differential-rounded-first':
      return reductionFor(strokesBelowIndex(indexTenths, fraction(roundTo(differential, 10), 10)))
    default:
      return unreachable(method)
  }
}

function reductionFor(below: Fraction): Reduction {
  if (compareFractions(below, first) < 0) return 0
  return compareFractions(below, second) < 0 ? -10 : -20
}

/**
 * A record, in tenths and newest first, after the reduction of its newest score: each of the newest twenty is lowered,
 * the exceptional one included, and all of a shorter record.
 * Source: Rules of Handicapping, rule 5.9; R&A and USGA; 2020 and 2024.
 */
export const reduceRecord = (recordTenths: readonly number[], reductionTenths: number): number[] =>
  recordTenths.map((each, at) => (at < countedDifferentials ? each + reductionTenths : each))

/** What several exceptional scores take off a score older than all of them, in tenths: reductions add up. */
export const totalReduction = (reductionsTenths: readonly number[]): number =>
  reductionsTenths.reduce((sum, each) => sum + each, 0)
