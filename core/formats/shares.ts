import { compareFractions, type Fraction, plus, zero } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'

/** What a side has of everything shared out so far. */
export interface ShareLine {
  readonly side: readonly BallId[]
  readonly total: Fraction
  /** From 1; equal totals share it. Null before anything is shared. */
  readonly place: number | null
  readonly isTied: boolean
}

/** The sides in order of their totals, the most first; `shares` are of the sides in order, null where still open. */
export function shareLines(
  sides: readonly (readonly BallId[])[],
  shares: readonly (readonly Fraction[] | null)[],
): ShareLine[] {
  const known = shares.filter(each => each !== null)
  const totals = sides.map((_, at) => known.map(each => each[at] ?? zero).reduce(plus, zero))
  return sides
    .map((side, at) => lineOf(side, totals[at] ?? zero, known.length > 0 ? totals : []))
    .sort((a, b) => compareFractions(b.total, a.total))
}

function lineOf(side: readonly BallId[], total: Fraction, totals: readonly Fraction[]): ShareLine {
  const better = totals.filter(other => compareFractions(other, total) > 0).length
  const level = totals.filter(other => compareFractions(other, total) === 0).length
  return { side, total, place: level === 0 ? null : better + 1, isTied: level > 1 }
}
