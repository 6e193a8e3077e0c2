/** An Index as issued, by the day of the score that produced it. */
export interface IssuedIndex {
  /** Whole days from any fixed one. */
  readonly day: number
  readonly indexTenths: number
}

const windowDays = 365
const scoresNeeded = 20

/**
 * Low Handicap Index in tenths after the newest score: the lowest Index of the 365 days before it, the 365th and its own
 * day included; `null` below twenty scores.
 * Source: Rules of Handicapping, rule 5.7 and interpretation 5.7/1; R&A; 2020 and 2024. That twenty scores are needed:
 * associations' pages, second-hand.
 */
export const lowIndex = (history: readonly IssuedIndex[], newestDay: number, scoresInRecord: number): number | null =>
  scoresInRecord < scoresNeeded ? null : lowestInWindow(history, newestDay)

/**
 * The Low Handicap Index that caps the next score: the one that stood before it, its window ending on the day of the
 * previous newest score. `null` where the history has none.
 * Source: Rules of Handicapping, interpretation 5.7/1; R&A.
 */
export const lowIndexForCap = (history: readonly IssuedIndex[], previousNewestDay: number): number | null =>
  lowestInWindow(history, previousNewestDay)

function lowestInWindow(history: readonly IssuedIndex[], lastDay: number): number | null {
  const inWindow = history.filter(({ day }) => day <= lastDay && day >= lastDay - windowDays)
  return inWindow.length === 0 ? null : Math.min(...inWindow.map(({ indexTenths }) => indexTenths))
}
