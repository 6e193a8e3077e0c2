import { cappedGross, maximumForHole } from '#core/formats/maximum-score.ts'
import type { Measure, MeasuredHole } from '#core/formats/parts.ts'
import { must } from '#core/values/assert.ts'

/** The most that a hole counts, in gross strokes. */
export const maximumOf = ({ par, strokes, maximum }: MeasuredHole): number =>
  maximumForHole(must(maximum, 'the maximum score is set'), par, strokes)

/** Gross strokes up to the hole's maximum, which a hole without a score counts. Rules of Golf, rule 21.2; 2019 and 2023. */
export const cappedStrokes: Measure = {
  unit: 'strokes',
  better: 'low',
  isNet: false,
  isCapped: true,
  valueOf: (hole, gross) => cappedGross(gross, maximumOf(hole)),
}

/** The same less the strokes received. */
export const cappedNet: Measure = {
  ...cappedStrokes,
  isNet: true,
  valueOf: (hole, gross) => cappedGross(gross, maximumOf(hole)) - hole.strokes,
}
