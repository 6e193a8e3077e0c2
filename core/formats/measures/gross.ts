import type { Measure } from '#core/formats/parts.ts'

/** Strokes as they are played. */
export const gross: Measure = {
  unit: 'strokes',
  better: 'low',
  isNet: false,
  isCapped: false,
  valueOf: (_, strokes) => strokes,
}
