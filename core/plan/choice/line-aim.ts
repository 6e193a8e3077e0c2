import { lowestOf } from '#core/plan/aim/best-aim.ts'
import { stepFor } from '#core/plan/aim/judged.ts'
import type { Place } from '#core/plan/aim/sketch.ts'
import { aimField, type Stroke, surfaceOn } from '#core/plan/aim/surface.ts'

/** Aims to either side that a shot down the hole is tried with. */
const widestYd = 30
const apartYd = 2
const aims = Array.from({ length: (2 * widestYd) / apartYd + 1 }, (_, at) => -widestYd + at * apartYd)

/** The best line for a shot of one length, and what the straight one is worth. */
export interface LineAim {
  readonly aim: Place
  /** Strokes to hole out, this one among them, with the best line and straight down the line of play. */
  readonly expected: number
  readonly straight: number
}

/** The best side to aim at for a stroke that is meant for one depth of the hole. */
export function bestLine(stroke: Stroke, beyondYd: number): LineAim {
  const field = aimField(stroke, { rightYd: aims, beyondYd: [beyondYd] }, 2 * stepFor(stroke))
  const surface = surfaceOn(field, { rightYd: aims, beyondYd: [beyondYd] })
  const aim = lowestOf(surface)
  const strokes = surface.expected[0] ?? []
  return {
    aim,
    expected: strokes[aims.indexOf(aim.rightYd)] ?? Number.NaN,
    straight: strokes[aims.indexOf(0)] ?? Number.NaN,
  }
}
