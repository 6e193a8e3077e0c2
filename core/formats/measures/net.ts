import type { Measure } from '#core/formats/parts.ts'

/** Strokes less those received on the hole. */
export const net: Measure = {
  unit: 'strokes',
  better: 'low',
  isNet: true,
  valueOf: ({ strokes }, score) => (typeof score === 'number' ? score - strokes : null),
}
