import type { Evidence } from '#core/plan/evidence.ts'

/** From tour professional at 0 to golfer who goes round in 90 at 1, and on to 1.85, where the evidence stops. */
export const skillScale = {
  confidence: 'derived',
  source: 'worked-out',
  tourIndex: -5,
  golfer90Index: 16,
  most: 1.85,
} as const satisfies Evidence & Record<string, unknown>

/**
 * Where a Handicap Index stands between the two published golfers: (H + 5) / 21, a plus Index negative. Source: derived
 * from the official length formulas, which rise in a straight line with the handicap.
 */
export function skillOf(handicapIndex: number): number {
  const { tourIndex, golfer90Index, most } = skillScale
  return Math.min(most, Math.max(0, (handicapIndex - tourIndex) / (golfer90Index - tourIndex)))
}

/** In a straight line through the two golfers, and beyond the second. */
export const mixed = (tour: number, golfer90: number, skill: number): number => tour + skill * (golfer90 - tour)

/** By equal ratios up to the golfer who goes round in 90, in a straight line beyond. */
export const mixedByRatio = (tour: number, golfer90: number, skill: number): number =>
  skill <= 1 ? tour * (golfer90 / tour) ** skill : mixed(tour, golfer90, skill)
