import type { Measure } from '#core/formats/parts.ts'
import { stablefordPoints } from '#core/formats/stableford-points.ts'

/** Stableford points, net; a ball picked up earns none. */
export const points: Measure = {
  unit: 'points',
  better: 'high',
  isNet: true,
  isCapped: false,
  valueOf: ({ par, strokes }, gross) => stablefordPoints(par, strokes, gross),
}
