import { expect, test } from 'vitest'
import type { HoleSketch, ShapeSketch } from '#core/outing/sketch.ts'
import { openHole } from '#core/plan/aim/sketch.ts'
import { sketchInYards } from '#core/plan/aim/sketch-of-course.ts'
import type { ShapeId } from '#core/values/ids.ts'

const bunker: ShapeSketch = { kind: 'bunker', unit: 'yards', gap: 3, width: 8, length: 16, by: 'green', side: 'right' }
const trees: ShapeSketch = {
  kind: 'trees',
  unit: 'yards',
  gap: 20,
  width: 30,
  length: 100,
  by: 'line',
  side: 'left',
  from: 'tee',
  distance: 150,
}
const fairway: ShapeSketch = { ...trees, kind: 'fairway', side: 'on', gap: 0, width: 40, length: 200 }
const sketch: HoleSketch = {
  green: { unit: 'yards', width: 20, depth: 30, right: 6 },
  shapes: new Map([bunker, trees].map((shape, place) => [`00${place + 1}` as ShapeId, shape])),
}

const kindsOf = (of: HoleSketch, length: number) =>
  sketchInYards(of, { unit: 'yards', length }).shapes.map(({ kind }) => kind)

test('what is drawn on the course is judged where it lies, its middle and halves in yards', () => {
  expect(sketchInYards(sketch, { unit: 'yards', length: 400 })).toEqual({
    green: { widthYd: 20, depthYd: 30, rightYd: 6 },
    shapes: [
      { kind: 'bunker', form: 'oval', rightYd: 23, beyondYd: 0, halfWidthYd: 4, halfDepthYd: 8 },
      { kind: 'trees', form: 'box', rightYd: -35, beyondYd: -200, halfWidthYd: 15, halfDepthYd: 50 },
      { kind: 'fairway', form: 'box', rightYd: 0, beyondYd: -210, halfWidthYd: 16, halfDepthYd: 190 },
    ],
  })
})

test('whoever drew no fairway has not said that there is none: it is there until one is drawn, and on no hole of one shot', () => {
  const pond: HoleSketch = { green: null, shapes: new Map([['001' as ShapeId, { ...bunker, kind: 'water' as const }]]) }
  expect(kindsOf(pond, 400)).toEqual(['water', 'fairway'])
  expect(kindsOf({ ...pond, shapes: new Map([...pond.shapes, ['002' as ShapeId, fairway]]) }, 400)).toEqual([
    'water',
    'fairway',
  ])
  expect(kindsOf(pond, 200)).toEqual(['water'])
  expect(sketchInYards({ green: null, shapes: new Map() }, { unit: 'yards', length: 400 })).toEqual(openHole(400))
})

test('without a length what is told from the tee is left out, and an unsaid green is of usual size', () => {
  const found = sketchInYards({ ...sketch, green: null }, { unit: 'yards', length: null })
  expect(found.green).toEqual({ widthYd: 26, depthYd: 28, rightYd: 0 })
  expect(found.shapes.map(({ kind }) => kind)).toEqual(['bunker'])
})

test('of a course in metres the sums are in yards', () => {
  // International yard and pound agreement, 1959: 100 m are 109.361 yards.
  const metres: HoleSketch = { green: null, shapes: new Map([['001' as ShapeId, { ...trees, unit: 'metres' }]]) }
  expect(sketchInYards(metres, { unit: 'metres', length: 350 }).shapes[0]?.beyondYd).toBeCloseTo(-150 * 1.09361, 2)
})
