import { type HoleSketch as CourseSketch, mostShapes } from '#core/outing/sketch.ts'
import { areaOf, greenIn } from '#core/outing/sketch-area.ts'
import { type LengthUnit, yardsPerUnit } from '#core/values/length.ts'
import { type HoleSketch, type Shape, usualFairway } from './sketch.ts'

/**
 * The course's sketch of a hole as shots are judged on it, in yards. A bunker is an oval, anything else a box; the first six
 * shapes are used. Whoever drew no fairway has not said that there is none: the usual one is put in. Of a hole without a
 * length what is told from the tee is left out, and so is that fairway.
 */
export function sketchInYards(
  sketch: CourseSketch,
  hole: { readonly unit: LengthUnit; readonly length: number | null },
): HoleSketch {
  const perUnit = yardsPerUnit(hole.unit)
  const yards = (amount: number): number => amount * perUnit
  const { width, depth, right } = greenIn(sketch.green, hole.unit)
  const shapes = [...sketch.shapes.values()].slice(0, mostShapes).flatMap((shape): Shape[] => {
    const area = areaOf(shape, sketch.green, hole)
    if (area === null) return []
    return [
      {
        kind: shape.kind,
        form: shape.kind === 'bunker' ? 'oval' : 'box',
        rightYd: yards((area.left + area.right) / 2),
        beyondYd: yards((area.short + area.long) / 2),
        halfWidthYd: yards((area.right - area.left) / 2),
        halfDepthYd: yards((area.long - area.short) / 2),
      },
    ]
  })
  const hasFairway = shapes.some(({ kind }) => kind === 'fairway')
  const undrawn = hasFairway || hole.length === null ? [] : usualFairway(yards(hole.length))
  return {
    green: { widthYd: yards(width), depthYd: yards(depth), rightYd: yards(right) },
    shapes: [...shapes, ...undrawn],
  }
}
