import type { ShapeKind } from '#core/outing/sketch.ts'
import { usualGreen } from '#core/outing/sketch-area.ts'
import type { Pin } from '#core/plan/approach.ts'
import type { Evidence } from '#core/plan/evidence.ts'

/**
 * A place on a hole in yards, seen along the line of play: right of it, and beyond the point of it that is level with the
 * middle of the green. The tee is at `beyondYd` of minus the hole's length.
 */
export interface Place {
  readonly rightYd: number
  readonly beyondYd: number
}

export interface Shape extends Place {
  readonly kind: ShapeKind
  readonly form: 'oval' | 'box'
  readonly halfWidthYd: number
  readonly halfDepthYd: number
}

/** An oval green; `rightYd` is how far its middle lies right of the line of play. */
export interface GreenSketch {
  readonly widthYd: number
  readonly depthYd: number
  readonly rightYd: number
}

/** What a player knows of a hole. All that is not drawn is rough. */
export interface HoleSketch {
  readonly green: GreenSketch
  readonly shapes: readonly Shape[]
}

/** Source: our own, about 5,150 square feet; tours play greens of 6,000. */
export const usualGround = {
  confidence: 'own',
  source: 'ours',
  green: { widthYd: usualGreen.width, depthYd: usualGreen.depth, rightYd: usualGreen.right },
  fairwayWidthYd: 32,
  /** The fairway ends so far short of the middle of the green. */
  fairwayEndsYd: 20,
  /** A hole of this length or less is taken for one of one shot, without a fairway. */
  fairwayOverYd: 260,
} as const satisfies Evidence & Record<string, unknown>

/** A hole of which nothing but its length is known: a fairway, a green, rough beside them. */
export const openHole = (lengthYd: number): HoleSketch => ({ green: usualGround.green, shapes: usualFairway(lengthYd) })

/** The fairway of a hole whose own nobody drew; none on a hole of one shot. */
export function usualFairway(lengthYd: number): readonly Shape[] {
  const { fairwayWidthYd, fairwayEndsYd, fairwayOverYd } = usualGround
  if (lengthYd <= fairwayOverYd) return []
  const halfDepthYd = (lengthYd - fairwayEndsYd) / 2
  return [
    {
      kind: 'fairway',
      form: 'box',
      rightYd: 0,
      beyondYd: -fairwayEndsYd - halfDepthYd,
      halfWidthYd: fairwayWidthYd / 2,
      halfDepthYd,
    },
  ]
}

export const pinSides = ['left', 'middle', 'right'] as const
export type PinSide = (typeof pinSides)[number]

/** No hole is cut nearer to the edge. Source: Course Rating System Manual, 2020. */
export const leastFromEdgeYd = 4

/** Where a pin stands: in the middle of its third, and never too near the edge. The thirds are our own. */
export function pinOn({ widthYd, depthYd, rightYd }: GreenSketch, depth: Pin, side: PinSide): Place {
  const across = { left: -1, middle: 0, right: 1 }[side] * (widthYd / 3)
  const along = { front: -1, middle: 0, back: 1 }[depth] * (depthYd / 3)
  const [halfWidth, halfDepth] = [widthYd, depthYd].map(size => Math.max(0.5, size / 2 - leastFromEdgeYd))
  const out = Math.hypot(across / (halfWidth ?? 1), along / (halfDepth ?? 1))
  const inside = out > 1 ? 1 / out : 1
  return { rightYd: rightYd + across * inside, beyondYd: along * inside }
}

export const middleOf = ({ rightYd }: GreenSketch): Place => ({ rightYd, beyondYd: 0 })

/** The whole hole seen in a mirror. */
export const mirrored = ({ green, shapes }: HoleSketch): HoleSketch => ({
  green: { ...green, rightYd: -green.rightYd },
  shapes: shapes.map(shape => ({ ...shape, rightYd: -shape.rightYd })),
})
