import type { Outcome } from '#core/plan/aim/ground.ts'
import type { TenStrokes } from '#core/plan/picture/ten-strokes.ts'

/** How a shot ends, told by its shape: on short grass, off it, or with a penalty stroke. */
export type StrokeShape = 'upright' | 'open' | 'hanging'

const shapeOf: Readonly<Record<Outcome, StrokeShape>> = {
  green: 'upright',
  fairway: 'upright',
  rough: 'open',
  sand: 'open',
  recovery: 'open',
  water: 'hanging',
  'out-of-bounds': 'hanging',
}

export interface StrokeDrawn {
  /** The middle of the stroke, from the left edge of the picture. */
  readonly x: number
  readonly shape: StrokeShape
}

export const pictureWidth = 320
/** From middle to middle: strokes that fall together stand side by side. */
export const leastApart = 13
const margin = leastApart / 2 + 1
/** A picture shows at least so many yards on either side of the aim. Our own. */
const leastBesideYd = 12

/** The strokes on a picture whose middle is the aim, in order from the left. */
export function strokesDrawn({ strokes }: TenStrokes, aimRightYd: number): readonly StrokeDrawn[] {
  const besideYd = strokes.reduce((most, { rightYd }) => Math.max(most, Math.abs(rightYd - aimRightYd)), leastBesideYd)
  const half = pictureWidth / 2
  const places = strokes.map(({ rightYd }) => half + ((rightYd - aimRightYd) / besideYd) * (half - margin))
  return sideBySide(places).map((x, at) => ({ x, shape: shapeOf[strokes[at]?.outcome ?? 'rough'] }))
}

/** Moved right where two stand too near, and back where that leads off the picture. */
function sideBySide(places: readonly number[]): number[] {
  const moved: number[] = []
  for (const x of places) moved.push(Math.max(x, (moved.at(-1) ?? Number.NEGATIVE_INFINITY) + leastApart))
  let edge = pictureWidth - margin
  for (let at = moved.length - 1; at >= 0; at--) {
    moved[at] = Math.min(moved[at] ?? edge, edge)
    edge = (moved[at] ?? edge) - leastApart
  }
  return moved
}

/** From the leftmost to the rightmost, in yards. */
export const widthYd = ({ strokes }: TenStrokes): number => (strokes.at(-1)?.rightYd ?? 0) - (strokes[0]?.rightYd ?? 0)
