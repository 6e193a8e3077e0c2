import { type Fraction, roundHalfUp } from '#core/values/fraction.ts'
import { type ExceptionalMethod, exceptionalReduction, type Reduction, reduceRecord } from './exceptional-score.ts'
import { averageDifferential, countingDifferentials, type FirstIndexMethod } from './handicap-index.ts'
import { type CappedIndex, capRise } from './index-cap.ts'

/** A record with one new score, before that score has had any effect. */
export interface RecordWithNewScore {
  /** In tenths, newest first, the new one included; what earlier exceptional scores took off is taken off. */
  readonly differentialsTenths: readonly number[]
  readonly newestUnrounded: Fraction
  /** Of the day the new score was played, in tenths; `null` before the first. */
  readonly indexWhenPlayedTenths: number | null
  /** The Low Index that stood before the new score, in tenths. */
  readonly lowIndexTenths: number | null
}

export interface IndexUpdate {
  readonly reductionTenths: Reduction
  readonly differentialsTenths: readonly number[]
  /** The differentials that count, ascending. */
  readonly countingTenths: readonly number[]
  /** In tenths, unrounded. */
  readonly averageTenths: Fraction
  /** To a tenth, before the caps. */
  readonly calculatedTenths: number
  readonly capped: CappedIndex
}

/**
 * One update of a Handicap Index in the order of the text: exceptional score, average of the lowest, tenth, soft cap,
 * hard cap, tenth, 54.0. `null` with too few scores.
 * Source: Rules of Handicapping, rules 5.2, 5.3, 5.7, 5.8 and 5.9; R&A and USGA; 2020 and 2024.
 */
export function updateIndex(
  record: RecordWithNewScore,
  methods: { readonly exceptional: ExceptionalMethod; readonly firstIndex: FirstIndexMethod },
): IndexUpdate | null {
  const { newestUnrounded, indexWhenPlayedTenths, lowIndexTenths } = record
  const reductionTenths =
    indexWhenPlayedTenths === null
      ? 0
      : exceptionalReduction(methods.exceptional, indexWhenPlayedTenths, newestUnrounded)
  const differentialsTenths = reduceRecord(record.differentialsTenths, reductionTenths)
  const averageTenths = averageDifferential(differentialsTenths, methods.firstIndex)
  if (averageTenths === null) return null
  const calculatedTenths = roundHalfUp(averageTenths)
  return {
    reductionTenths,
    differentialsTenths,
    countingTenths: countingDifferentials(differentialsTenths, methods.firstIndex),
    averageTenths,
    calculatedTenths,
    capped: capRise(calculatedTenths, lowIndexTenths),
  }
}
