/** What a benchmark prints: ours beside the yardstick of the same run, and whether the budget holds. */
export interface BenchResult {
  readonly name: string
  readonly ours: Readonly<Record<string, number>>
  readonly yardstick: Readonly<Record<string, number>>
  readonly ratio: Readonly<Record<string, number>>
  readonly budget: Readonly<Record<string, number>>
  readonly holds: boolean
}

/** The value below which `share` of the sorted samples lie. */
export function quantile(samples: readonly number[], share: number): number {
  const sorted = [...samples].sort((a, b) => a - b)
  const index = Math.min(sorted.length - 1, Math.floor(share * sorted.length))
  return sorted[index] ?? Number.NaN
}

/** To two places: enough to read, too few to mislead. */
export const rounded = (value: number): number => Math.round(value * 100) / 100
