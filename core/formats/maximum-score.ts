import { netDoubleBogey } from '#core/handicap/max-hole-score.ts'
import { unreachable } from '#core/values/assert.ts'

/** The caps that a committee may choose for maximum score, in gross strokes. */
export type MaximumScore =
  | { readonly kind: 'twice-par' }
  | { readonly kind: 'net-double-bogey' }
  | { readonly kind: 'fixed'; readonly strokes: number }

/**
 * The cap of one hole, in gross strokes.
 * Source: Rules of Golf, rule 21.2a; R&A and USGA; 2019 and 2023, second-hand.
 */
export function maximumForHole(maximum: MaximumScore, par: number, strokesReceived: number): number {
  switch (maximum.kind) {
    case 'twice-par':
      return 2 * par
    case 'net-double-bogey':
      return netDoubleBogey(par, strokesReceived)
    case 'fixed':
      return maximum.strokes
    default:
      return unreachable(maximum)
  }
}

/**
 * A hole's gross score under its cap; a hole without a score (`null`) counts the cap.
 * Source: Rules of Golf, rule 21.2b; R&A and USGA; 2019 and 2023.
 */
export const cappedGross = (gross: number | null, maximum: number): number =>
  gross === null ? maximum : Math.min(gross, maximum)
