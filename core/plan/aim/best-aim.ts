import { type Judged, sharesOf, stepFor } from './judged.ts'
import { type HoleSketch, middleOf, type Place } from './sketch.ts'
import { type AimSurface, type Aims, aimField, expectedOn, type Stroke, surfaceOn } from './surface.ts'

/** Where to aim, and what aiming at the flag or at the middle of the green costs more; never below 0. */
export interface BestAim {
  readonly best: Judged
  readonly flagCost: number
  readonly middleCost: number
  /** What aiming elsewhere costs: a strip to be drawn. */
  readonly strip: AimStrip
}

/** The cost of aiming elsewhere than the best, from left to right, in strokes. */
export type AimStrip = readonly { readonly rightYd: number; readonly cost: number }[]

/** Aims are looked through by this many yards, then by one around the best. */
const coarseYd = 3
const farthestYd = 24
const deepestYd = 12
const steps = (from: number, to: number, by: number): number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, at) => from + at * by)

/**
 * The best aim of a stroke at a green, in two stages over one layout: aims about the middle of the green, then closer ones
 * about the lowest.
 */
export function bestAim(stroke: Stroke, sketch: HoleSketch, pin: Place): BestAim {
  const centre = middleOf(sketch.green)
  const wide: Aims = {
    rightYd: steps(centre.rightYd - farthestYd, centre.rightYd + farthestYd, coarseYd),
    beyondYd: steps(centre.beyondYd - deepestYd, centre.beyondYd + deepestYd, coarseYd),
  }
  const field = aimField(stroke, wide, stepFor(stroke))
  const rough = surfaceOn(field, wide)
  const near = lowestOf(rough)
  const fine = surfaceOn(field, {
    rightYd: steps(near.rightYd - coarseYd, near.rightYd + coarseYd, 1),
    beyondYd: steps(near.beyondYd - coarseYd, near.beyondYd + coarseYd, 1),
  })
  const [flag, middle] = [expectedOn(field, pin), expectedOn(field, centre)]
  const found = lowestOf(fine)
  const aims = [
    { aim: found, strokes: expectedOn(field, found) },
    { aim: centre, strokes: middle },
    { aim: pin, strokes: flag },
  ]
  const best = aims.reduce((low, each) => (each.strokes < low.strokes ? each : low))
  return {
    best: { aim: best.aim, expected: best.strokes, shares: sharesOf(stroke, best.aim) },
    flagCost: flag - best.strokes,
    middleCost: middle - best.strokes,
    strip: stripOf(rough, best.aim, best.strokes),
  }
}

/** The aim of the least strokes; of several equal ones the one nearest to the middle of what was asked. */
export function lowestOf({ rightYd, beyondYd, expected }: AimSurface): Place {
  const middle = ((rightYd[0] ?? 0) + (rightYd.at(-1) ?? 0)) / 2
  let best = { rightYd: middle, beyondYd: beyondYd[0] ?? 0, strokes: Number.POSITIVE_INFINITY }
  for (const [row, beyond] of beyondYd.entries()) {
    for (const [column, right] of rightYd.entries()) {
      const strokes = expected[row]?.[column] ?? Number.POSITIVE_INFINITY
      const isNearer = Math.abs(right - middle) < Math.abs(best.rightYd - middle)
      if (strokes < best.strokes - tiny || (strokes < best.strokes + tiny && isNearer)) {
        best = { rightYd: right, beyondYd: beyond, strokes }
      }
    }
  }
  return { rightYd: best.rightYd, beyondYd: best.beyondYd }
}

/** Sums in another order differ so much. */
const tiny = 1e-9

function stripOf({ rightYd, beyondYd, expected }: AimSurface, aim: Place, least: number): AimStrip {
  const gap = (beyond: number): number => Math.abs(beyond - aim.beyondYd)
  const row = beyondYd.reduce((near, beyond, at) => (gap(beyond) < gap(beyondYd[near] ?? 0) ? at : near), 0)
  return rightYd.map((right, at) => ({ rightYd: right, cost: Math.max(0, (expected[row]?.[at] ?? least) - least) }))
}
