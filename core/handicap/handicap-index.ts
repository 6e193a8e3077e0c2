import { type Fraction, fraction, plus, roundHalfUp } from '#core/values/fraction.ts'

/** 54.0 for everybody. Source: Rules of Handicapping, rule 5.3; R&A; 2020 and 2024. */
export const maximumIndexTenths = 540

export const capIndex = (indexTenths: number): number => Math.min(indexTenths, maximumIndexTenths)

/** How many of the lowest differentials count, and what is added to their average. */
export interface IndexTableRow {
  readonly lowest: number
  readonly adjustmentTenths: number
}

/** From so many scores upward. */
const indexTable: readonly (IndexTableRow & { readonly from: number })[] = [
  { from: 20, lowest: 8, adjustmentTenths: 0 },
  { from: 19, lowest: 7, adjustmentTenths: 0 },
  { from: 17, lowest: 6, adjustmentTenths: 0 },
  { from: 15, lowest: 5, adjustmentTenths: 0 },
  { from: 12, lowest: 4, adjustmentTenths: 0 },
  { from: 9, lowest: 3, adjustmentTenths: 0 },
  { from: 7, lowest: 2, adjustmentTenths: 0 },
  { from: 6, lowest: 2, adjustmentTenths: -10 },
  { from: 5, lowest: 1, adjustmentTenths: 0 },
  { from: 4, lowest: 1, adjustmentTenths: -10 },
  { from: 3, lowest: 1, adjustmentTenths: -20 },
]

const withOneOrTwoScores: IndexTableRow = { lowest: 1, adjustmentTenths: -20 }

/** Scores before an Index is issued; associations differ. */
export const firstIndexMethods = ['from-three-scores', 'from-one-score'] as const
export type FirstIndexMethod = (typeof firstIndexMethods)[number]

/** Differentials beyond the newest twenty never count, however low. */
export const countedDifferentials = 20

/**
 * The row of the table for a record of so many differentials; `null` where there is no Index yet.
 * Source: Rules of Handicapping, rule 5.2a and 5.2b; Danish union; 2020 and 2024. From one score: Danish union alone.
 */
export function indexTableRow(scores: number, firstIndex: FirstIndexMethod): IndexTableRow | null {
  const row = indexTable.find(({ from }) => scores >= from)
  if (row !== undefined) return { lowest: row.lowest, adjustmentTenths: row.adjustmentTenths }
  return scores >= 1 && firstIndex === 'from-one-score' ? withOneOrTwoScores : null
}

/** The lowest of the newest twenty differentials that count, ascending, in tenths; the record is newest first. */
export function countingDifferentials(recordTenths: readonly number[], firstIndex: FirstIndexMethod): number[] {
  const row = indexTableRow(recordTenths.length, firstIndex)
  return recordTenths
    .slice(0, countedDifferentials)
    .sort((a, b) => a - b)
    .slice(0, row?.lowest ?? 0)
}

/**
 * Average of the lowest differentials with the table's adjustment, in tenths and unrounded; `null` with too few scores.
 * The record is in tenths, newest first.
 * Source: Rules of Handicapping, rule 5.2; R&A and USGA; 2020 and 2024.
 */
export function averageDifferential(recordTenths: readonly number[], firstIndex: FirstIndexMethod): Fraction | null {
  const row = indexTableRow(recordTenths.length, firstIndex)
  if (row === null) return null
  const sum = countingDifferentials(recordTenths, firstIndex).reduce((total, each) => total + each, 0)
  return plus(fraction(sum, row.lowest), fraction(row.adjustmentTenths))
}

/**
 * Handicap Index in tenths from differentials alone, without caps, exceptional scores or a committee's adjustment;
 * `null` with too few scores. A negative half goes upward too, by analogy with differentials.
 * Source: Rules of Handicapping, rules 5.2 and 5.3; R&A and USGA; 2020 and 2024.
 */
export function handicapIndex(recordTenths: readonly number[], firstIndex: FirstIndexMethod): number | null {
  const average = averageDifferential(recordTenths, firstIndex)
  return average === null ? null : capIndex(roundHalfUp(average))
}

/** An Index as it is written: one decimal, with a plus sign for one better than scratch. Common practice. */
export function formatIndex(indexTenths: number): string {
  const size = Math.abs(indexTenths)
  return `${indexTenths < 0 ? '+' : ''}${Math.floor(size / 10)}.${size % 10}`
}
