import type { Outing } from '#core/outing/outing.ts'
import type { GreenSketch, HoleSketch, ShapeKind, ShapeSketch } from '#core/outing/sketch.ts'
import { areaOf, greenIn, type SketchArea } from '#core/outing/sketch-area.ts'
import { usualSize } from '#core/outing/sketch-sizes.ts'
import type { BallId, ShapeId } from '#core/values/ids.ts'
import type { LengthUnit } from '#core/values/length.ts'

/** A hole as it is drawn; `length` null where nobody has typed it in. */
export interface HoleDrawn {
  readonly unit: LengthUnit
  readonly length: number | null
}

/** The hole's length from the tee of this phone's player, else from the first tee whose lengths are in. */
export function holeDrawn({ tees, balls, players }: Outing, ball: BallId | null, hole: number): HoleDrawn {
  const player = ball === null ? undefined : balls.get(ball)?.players[0]
  const own = player === undefined ? null : players.get(player)?.tee
  const ownTee = own ? tees.get(own) : undefined
  const lengths = [ownTee, ...tees.values()].find(tee => tee?.lengths)?.lengths ?? null
  return { unit: lengths?.unit ?? 'yards', length: lengths?.byHole[hole - 1] ?? null }
}

export interface ShapeDrawn {
  readonly id: ShapeId
  /** From 1, as the list has it. */
  readonly n: number
  readonly kind: ShapeKind
  readonly area: SketchArea
}

/** What can be drawn of a sketch, in units of the hole about the middle of the green. */
export const shapesDrawn = ({ green, shapes }: HoleSketch, hole: HoleDrawn): readonly ShapeDrawn[] =>
  [...shapes].flatMap(([id, shape], place) => {
    const area = areaOf(shape, green, hole)
    return area === null ? [] : [{ id, n: place + 1, kind: shape.kind, area }]
  })

export const greenDrawn = ({ green }: HoleSketch, { unit }: HoleDrawn): GreenSketch => greenIn(green, unit)

/** Where a new shape can be put. */
export type ShapePlace =
  | { readonly by: 'green'; readonly side: Extract<ShapeSketch, { by: 'green' }>['side'] }
  | { readonly by: 'line'; readonly side: Extract<ShapeSketch, { by: 'line' }>['side'] }

export const shapePlaces: readonly ShapePlace[] = [
  { by: 'green', side: 'left' },
  { by: 'green', side: 'right' },
  { by: 'green', side: 'short' },
  { by: 'green', side: 'long' },
  { by: 'line', side: 'left' },
  { by: 'line', side: 'right' },
  { by: 'line', side: 'on' },
]

/** Of a fairway there is one place that is meant. */
export const fairwayPlace: ShapePlace = { by: 'line', side: 'on' }

/** Where along the hole a new shape begins, of the hole's length in hundredths: bunkers and water lie where drives land. Our own. */
const beginsAtPercent: Readonly<Record<ShapeKind, number>> = {
  bunker: 55,
  water: 55,
  'out-of-bounds': 10,
  trees: 30,
  fairway: 35,
}

/** A shape of a usual size at that place, to be corrected. Of a hole without a length it is told from the green. */
export function newShape(kind: ShapeKind, place: ShapePlace, { unit, length }: HoleDrawn): ShapeSketch {
  const size = { kind, unit, ...usualSize(kind, place, unit) }
  if (place.by === 'green') return { ...size, ...place }
  if (length === null) return { ...size, ...place, from: 'green', distance: 60 }
  const distance = Math.round((length * beginsAtPercent[kind]) / 1000) * 10
  const room = Math.max(10, length - distance)
  return { ...size, ...place, length: Math.min(size.length, room), from: 'tee', distance }
}

/** The figures that can be chosen by one tap each; the one that stands is always among them. */
export const amountsWith = (proposed: readonly number[], stands: number | null): readonly number[] =>
  [...new Set([...proposed, ...(stands === null ? [] : [stands])])].sort((a, b) => a - b)

export const greenWidths = [16, 20, 24, 28, 32, 36] as const
export const greenDepths = [16, 20, 24, 28, 32, 36] as const
export const greenRights = [-10, 0, 10] as const

const widths: Readonly<Record<ShapeKind, readonly number[]>> = {
  bunker: [5, 8, 12, 16, 20],
  water: [5, 10, 20, 40, 80],
  'out-of-bounds': [20, 40, 60, 100],
  trees: [10, 20, 30, 40, 60],
  fairway: [20, 25, 30, 35, 40],
}

const lengths: Readonly<Record<ShapeKind, readonly number[]>> = {
  bunker: [6, 10, 15, 20, 30],
  water: [10, 20, 40, 80, 150],
  'out-of-bounds': [60, 120, 200, 300],
  trees: [20, 60, 100, 150, 250],
  fairway: [100, 150, 200, 250, 300],
}

const fromTee = [100, 130, 150, 180, 200, 220, 240, 260, 280] as const
const fromGreen = [20, 40, 60, 80, 100, 130] as const

/** What a tap can put into each figure of a shape. */
export function amountsOf(shape: ShapeSketch, { length }: HoleDrawn) {
  const reach = shape.by === 'line' && shape.from === 'tee' ? fromTee : fromGreen
  return {
    distance:
      shape.by === 'line'
        ? amountsWith(
            reach.filter(each => each < (length ?? 900)),
            shape.distance,
          )
        : [],
    width: amountsWith(widths[shape.kind], shape.width),
    gap: hasGap(shape) ? amountsWith(shape.by === 'green' ? [0, 3, 5, 10, 20] : [0, 10, 15, 25, 40], shape.gap) : [],
    length: amountsWith(lengths[shape.kind], shape.length),
  } as const
}

/** What lies on the line has no gap to it. */
export const hasGap = (shape: ShapeSketch): boolean => shape.by === 'green' || shape.side !== 'on'

/** A shape told from the other end of the hole, where it lies now. */
export function toldFrom(
  shape: Extract<ShapeSketch, { by: 'line' }>,
  from: 'tee' | 'green',
  { length }: HoleDrawn,
): ShapeSketch {
  if (from === shape.from || length === null) return shape
  return { ...shape, from, distance: Math.max(0, length - shape.distance - shape.length) }
}
