import type { ShapeId } from '#core/values/ids.ts'
import type { GreenSketch, HoleSketch, ShapeSketch } from './sketch.ts'
import { factOrNone, type NewFact } from './stated-fact.ts'

/** The size of a hole's green; null where it was said by mistake. */
export const greenSketchFacts = (hole: number, green: GreenSketch | null): NewFact[] => [
  factOrNone('green', { hole }, green),
]

/** A shape put in or corrected; null takes it away. */
export const shapeSketchFacts = (hole: number, shape: ShapeId, value: ShapeSketch | null): NewFact[] => [
  factOrNone('shape', { hole, shape }, value),
]

/** The whole sketch of a hole taken away, in one act. */
export const clearedSketchFacts = (hole: number, { green, shapes }: HoleSketch): NewFact[] => [
  ...(green === null ? [] : greenSketchFacts(hole, null)),
  ...[...shapes.keys()].flatMap(shape => shapeSketchFacts(hole, shape, null)),
]

/**
 * The name of the next shape: its number keeps the order in which they were put in, what comes after it is the phone's own,
 * so that two phones never mean one shape.
 */
export function nextShapeId({ shapes }: HoleSketch, ownPart: string): ShapeId {
  const numbers = [...shapes.keys()].map(numberOfShape)
  const next = Math.min(largestNumber, Math.max(0, ...numbers) + 1)
  return `${String(next).padStart(3, '0')}-${ownPart}` as ShapeId
}

const largestNumber = 999

const numberOfShape = (id: ShapeId): number => Number(/^\d{1,3}/.exec(id)?.[0] ?? 0)
