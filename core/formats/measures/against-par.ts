import { parBogey } from '#core/formats/par-bogey.ts'
import type { Measure } from '#core/formats/parts.ts'

/** Each hole against its par, net: 1 won, 0 halved, -1 lost. Rules of Golf, rule 21.3; R&A and USGA; 2019 and 2023. */
export const againstPar: Measure = {
  unit: 'holes',
  better: 'high',
  isNet: true,
  isCapped: false,
  valueOf: ({ par, strokes }, gross) => parBogey(par, strokes, gross),
}
