import { amountIn, type LengthUnit } from '#core/values/length.ts'
import type { GreenSketch, ShapeSketch } from './sketch.ts'

/**
 * A rectangle on a hole, in whole units as it is seen from the tee: `left` and `right` of the line of play, positive to the
 * right; `short` and `long` of the point of it that is level with the middle of the green, positive beyond.
 */
export interface SketchArea {
  readonly left: number
  readonly right: number
  readonly short: number
  readonly long: number
}

/** A green whose size nobody has said, in yards. Source: our own default, between published means of 5,000 and 6,000 sq ft. */
export const usualGreen: GreenSketch = { unit: 'yards', width: 26, depth: 28, right: 0 }

export const greenIn = (green: GreenSketch | null, unit: LengthUnit): GreenSketch => {
  const { width, depth, right, unit: said } = green ?? usualGreen
  const inUnit = (amount: number): number =>
    Math.sign(amount) * amountIn({ amount: Math.abs(amount), unit: said }, unit)
  return { unit, width: inUnit(width), depth: inUnit(depth), right: inUnit(right) }
}

/**
 * Where a shape lies, in whole units of the hole's `length`; null for one told from the tee of a hole whose length is not
 * known. Of a green of odd size the half unit is in the sum.
 */
export function areaOf(
  shape: ShapeSketch,
  green: GreenSketch | null,
  hole: { readonly unit: LengthUnit; readonly length: number | null },
): SketchArea | null {
  const inUnit = (amount: number): number => amountIn({ amount, unit: shape.unit }, hole.unit)
  const [gap, width, length] = [inUnit(shape.gap), inUnit(shape.width), inUnit(shape.length)]
  if (shape.by === 'green') return besideGreen(shape.side, { gap, width, length }, greenIn(green, hole.unit))
  const distance = inUnit(shape.distance)
  const across = acrossLine(shape.side, gap, width)
  if (shape.from === 'green') return { ...across, short: -distance - length, long: -distance }
  return hole.length === null
    ? null
    : { ...across, short: distance - hole.length, long: distance + length - hole.length }
}

type Size = Pick<ShapeSketch, 'gap' | 'width' | 'length'>

function besideGreen(
  side: Extract<ShapeSketch, { by: 'green' }>['side'],
  { gap, width, length }: Size,
  green: GreenSketch,
): SketchArea {
  const near = gap + (side === 'left' || side === 'right' ? green.width : green.depth) / 2
  const [from, to] = side === 'left' || side === 'short' ? [-near - width, -near] : [near, near + width]
  return side === 'left' || side === 'right'
    ? { left: green.right + from, right: green.right + to, short: -length / 2, long: length / 2 }
    : { left: green.right - length / 2, right: green.right + length / 2, short: from, long: to }
}

function acrossLine(
  side: Extract<ShapeSketch, { by: 'line' }>['side'],
  gap: number,
  width: number,
): Pick<SketchArea, 'left' | 'right'> {
  if (side === 'on') return { left: -width / 2, right: width / 2 }
  return side === 'left' ? { left: -gap - width, right: -gap } : { left: gap, right: gap + width }
}
