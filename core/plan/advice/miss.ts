import { groundOf } from '#core/plan/aim/ground.ts'
import { type HoleSketch, middleOf, type Place } from '#core/plan/aim/sketch.ts'
import { verdictBorders } from '#core/plan/assumptions.ts'

export const missSides = ['left', 'right', 'short', 'long'] as const
export type MissSide = (typeof missSides)[number]

/** Where a miss of the green is cheap: what a ball just off each side costs more than off the cheapest. */
export interface Misses {
  readonly cheapest: MissSide
  readonly dearest: MissSide
  readonly costs: Readonly<Record<MissSide, number>>
  /** False where the sides differ by less than says anything. */
  readonly differ: boolean
}

/** A miss that is looked at lies so far off the edge of the green. */
const offEdgeYd = 6

/** Out of bounds counts as the stroke again and one more. */
const outOfBoundsStrokes = 2

export function missesAt(sketch: HoleSketch, pin: Place, ball: Place, handicapIndex: number): Misses {
  const ground = groundOf({ sketch, pin, ball, handicapIndex, countsShortSide: true })
  const { rightYd, beyondYd } = middleOf(sketch.green)
  const [wide, deep] = [sketch.green.widthYd / 2 + offEdgeYd, sketch.green.depthYd / 2 + offEdgeYd]
  const places: Readonly<Record<MissSide, Place>> = {
    left: { rightYd: rightYd - wide, beyondYd },
    right: { rightYd: rightYd + wide, beyondYd },
    short: { rightYd, beyondYd: beyondYd - deep },
    long: { rightYd, beyondYd: beyondYd + deep },
  }
  const worth = missSides.map(side => {
    const { rightYd: x, beyondYd: y } = places[side]
    const outcome = ground.outcomeAt(x, y)
    const dry = ground.valueAt(outcome, x, y)
    return outcome === 'out-of-bounds' ? ground.valueAt('rough', x, y) + outOfBoundsStrokes : dry
  })
  const [least, most] = [Math.min(...worth), Math.max(...worth)]
  const costs = Object.fromEntries(missSides.map((side, at) => [side, (worth[at] ?? least) - least]))
  return {
    cheapest: missSides[worth.indexOf(least)] ?? 'short',
    dearest: missSides[worth.indexOf(most)] ?? 'short',
    costs: costs as Record<MissSide, number>,
    differ: most - least >= verdictBorders.slightly,
  }
}

/** What is drawn on a hole that takes a stroke, and on which side of the line of play. */
export interface Trouble {
  readonly kind: 'water' | 'out-of-bounds' | 'trees' | 'bunker'
  readonly side: 'left' | 'right' | 'across'
  /** From the tee to where it begins and ends, in yards. */
  readonly fromTeeYd: number
  readonly toYd: number
}

export function troublesOf({ shapes }: HoleSketch, lengthYd: number): Trouble[] {
  return shapes.flatMap(({ kind, rightYd, beyondYd, halfWidthYd, halfDepthYd }) => {
    if (kind === 'fairway') return []
    const side = Math.abs(rightYd) < halfWidthYd ? 'across' : rightYd < 0 ? 'left' : 'right'
    const fromTeeYd = Math.max(0, lengthYd + beyondYd - halfDepthYd)
    return [{ kind, side, fromTeeYd, toYd: lengthYd + beyondYd + halfDepthYd } as const]
  })
}
