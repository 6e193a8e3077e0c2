import type { ShapeId } from '#core/values/ids.ts'
import type { LengthUnit } from '#core/values/length.ts'

/** What can lie on a hole. Out of bounds stands for ground too where a ball is lost. */
export const shapeKinds = ['bunker', 'water', 'out-of-bounds', 'trees', 'fairway'] as const
export type ShapeKind = (typeof shapeKinds)[number]

/** Of the green, as it is seen from the tee. */
export const greenSides = ['left', 'right', 'short', 'long'] as const
export type GreenSide = (typeof greenSides)[number]

/** Of the line of play; `on` lies across it, as much on the left as on the right. */
export const lineSides = ['left', 'right', 'on'] as const
export type LineSide = (typeof lineSides)[number]

export const lineEnds = ['tee', 'green'] as const
export type LineEnd = (typeof lineEnds)[number]

/** So many shapes of a hole are used. */
export const mostShapes = 6

/** How large a green is, in whole units: across the line of play and along it; and how far right of that line its middle is. */
export interface GreenSketch {
  readonly unit: LengthUnit
  readonly width: number
  readonly depth: number
  /** Negative to the left. */
  readonly right: number
}

interface ShapeSize {
  readonly kind: ShapeKind
  readonly unit: LengthUnit
  /** From the edge of the green, or from the line, to where the shape begins; 0 for one that lies on the line. */
  readonly gap: number
  /** From there away from the green or the line; of one on the line, across it. */
  readonly width: number
  /** Along that side of the green, its middle at the green's; or along the line. */
  readonly length: number
}

/** A shape as one rectangle. */
export type ShapeSketch = ShapeSize &
  (
    | { readonly by: 'green'; readonly side: GreenSide }
    /** `distance`: from the tee, or from the middle of the green, to the end of the shape that is nearer to it. */
    | { readonly by: 'line'; readonly side: LineSide; readonly from: LineEnd; readonly distance: number }
  )

/** A note of the course that anybody can make of a hole; nothing needs it. */
export interface HoleSketch {
  /** Null where nobody has said its size. */
  readonly green: GreenSketch | null
  /** In the order in which they were put in. */
  readonly shapes: ReadonlyMap<ShapeId, ShapeSketch>
}

export const emptySketch: HoleSketch = { green: null, shapes: new Map() }

export const isEmptySketch = ({ green, shapes }: HoleSketch): boolean => green === null && shapes.size === 0
