import * as z from 'zod/mini'
import { type GreenSketch, greenSides, lineEnds, lineSides, type ShapeSketch, shapeKinds } from '#core/outing/sketch.ts'
import { lengthUnits } from '#core/values/length.ts'
import { wholeFrom } from './atoms.ts'
import { proves } from './proof.ts'

/** No hole is longer, nor anything on it, in yards or metres. */
const longest = 900

const unit = z.enum(lengthUnits)

/** The sketch of a green: in the facts and in the plain file. */
export const greenSchema = proves<GreenSketch>()(
  z.strictObject({ unit, width: wholeFrom(3, 99), depth: wholeFrom(3, 99), right: wholeFrom(-99, 99) }),
)

const size = {
  kind: z.enum(shapeKinds),
  unit,
  gap: wholeFrom(0, longest),
  width: wholeFrom(1, longest),
  length: wholeFrom(1, longest),
}

export const shapeSchema = proves<ShapeSketch>()(
  z.discriminatedUnion('by', [
    z.strictObject({ ...size, by: z.literal('green'), side: z.enum(greenSides) }),
    z.strictObject({
      ...size,
      by: z.literal('line'),
      side: z.enum(lineSides),
      from: z.enum(lineEnds),
      distance: wholeFrom(0, longest),
    }),
  ]),
)
