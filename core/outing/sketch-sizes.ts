import { amountIn, type LengthUnit } from '#core/values/length.ts'
import type { ShapeKind, ShapeSketch } from './sketch.ts'

type Size = Pick<ShapeSketch, 'gap' | 'width' | 'length'>

/** What a new shape begins with beside the green, in yards, to be corrected. Source: our own, of no survey. */
const byGreen: Readonly<Record<ShapeKind, Size>> = {
  bunker: { gap: 3, width: 8, length: 15 },
  water: { gap: 5, width: 20, length: 40 },
  'out-of-bounds': { gap: 20, width: 60, length: 120 },
  trees: { gap: 15, width: 30, length: 60 },
  fairway: { gap: 0, width: 30, length: 30 },
}

/** Beside the line. Source: our own; the width of a fairway from published 25 to 30 yards on tour courses, and more elsewhere. */
const byLine: Readonly<Record<ShapeKind, Size>> = {
  bunker: { gap: 15, width: 12, length: 20 },
  water: { gap: 25, width: 40, length: 80 },
  'out-of-bounds': { gap: 35, width: 60, length: 300 },
  trees: { gap: 25, width: 40, length: 150 },
  fairway: { gap: 0, width: 32, length: 200 },
}

/** On the line. Source: our own. */
const onLine: Readonly<Record<ShapeKind, Size>> = {
  ...byLine,
  bunker: { gap: 0, width: 12, length: 10 },
  water: { gap: 0, width: 80, length: 20 },
  'out-of-bounds': { gap: 0, width: 80, length: 20 },
  trees: { gap: 0, width: 30, length: 20 },
}

/** The size that a new shape begins with. */
export function usualSize(kind: ShapeKind, place: Pick<ShapeSketch, 'by' | 'side'>, unit: LengthUnit): Size {
  const yards = (place.by === 'green' ? byGreen : place.side === 'on' ? onLine : byLine)[kind]
  const inUnit = (amount: number): number => amountIn({ amount, unit: 'yards' }, unit)
  return { gap: inUnit(yards.gap), width: inUnit(yards.width), length: inUnit(yards.length) }
}
