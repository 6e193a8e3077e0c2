import type { Place, Shape } from './sketch.ts'

type Outline = Omit<Shape, 'kind'>

export function isInside(
  { form, rightYd, beyondYd, halfWidthYd, halfDepthYd }: Outline,
  x: number,
  y: number,
): boolean {
  const [across, along] = [(x - rightYd) / halfWidthYd, (y - beyondYd) / halfDepthYd]
  return form === 'box' ? Math.abs(across) <= 1 && Math.abs(along) <= 1 : across * across + along * along <= 1
}

/** Which share of the way from a ball to a place inside a shape lies before the shape; 0 where it starts inside. */
export function entryInto(shape: Outline, ball: Place, x: number, y: number): number {
  const fromX = (ball.rightYd - shape.rightYd) / shape.halfWidthYd
  const fromY = (ball.beyondYd - shape.beyondYd) / shape.halfDepthYd
  const [wayX, wayY] = [(x - ball.rightYd) / shape.halfWidthYd, (y - ball.beyondYd) / shape.halfDepthYd]
  const share = shape.form === 'box' ? intoBox(fromX, fromY, wayX, wayY) : intoOval(fromX, fromY, wayX, wayY)
  return Math.min(1, Math.max(0, share))
}

/** Into the square from -1 to 1. */
const intoBox = (fromX: number, fromY: number, wayX: number, wayY: number): number =>
  Math.max(intoSlab(fromX, wayX), intoSlab(fromY, wayY))

const intoSlab = (from: number, way: number): number => (way === 0 ? 0 : ((way > 0 ? -1 : 1) - from) / way)

/** Into the circle of radius 1. */
function intoOval(fromX: number, fromY: number, wayX: number, wayY: number): number {
  const a = wayX * wayX + wayY * wayY
  const b = fromX * wayX + fromY * wayY
  const c = fromX * fromX + fromY * fromY - 1
  return a === 0 ? 0 : (-b - Math.sqrt(Math.max(0, b * b - a * c))) / a
}

/** How much green a ball rolls over on its straight way to the pin, in yards. */
export function runToward(green: Outline, x: number, y: number, pin: Place): number {
  const share = entryInto(green, { rightYd: x, beyondYd: y }, pin.rightYd, pin.beyondYd)
  return (1 - share) * Math.hypot(x - pin.rightYd, y - pin.beyondYd)
}
