import type { Measure } from '#core/formats/parts.ts'

/** Strokes less those received on the hole. */
export const net: Measure = {
  unit: 'strokes',
  better: 'low',
  isNet: true,
  isCapped: false,
  valueOf: ({ strokes }, gross) => (gross === null ? null : gross - strokes),
}
