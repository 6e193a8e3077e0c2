import { describe, expect, it } from 'vitest'
import { clearedSketchFacts, greenSketchFacts, nextShapeId, shapeSketchFacts } from '#core/outing/acts-sketch.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import type { GreenSketch, HoleSketch, ShapeSketch } from '#core/outing/sketch.ts'
import { areaOf } from '#core/outing/sketch-area.ts'
import { usualSize } from '#core/outing/sketch-sizes.ts'
import type { ShapeId } from '#core/values/ids.ts'
import { parseOutingFile } from '#shared/outing-file.ts'
import { outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const green: GreenSketch = { unit: 'yards', width: 20, depth: 30, right: 0 }
const bunker: ShapeSketch = { kind: 'bunker', unit: 'yards', gap: 3, width: 8, length: 16, by: 'green', side: 'left' }
const stream: ShapeSketch = {
  kind: 'water',
  unit: 'yards',
  gap: 0,
  width: 80,
  length: 10,
  by: 'line',
  side: 'on',
  from: 'green',
  distance: 40,
}
const trees: ShapeSketch = {
  ...stream,
  kind: 'trees',
  side: 'right',
  gap: 25,
  width: 30,
  length: 100,
  from: 'tee',
  distance: 180,
}

const course = {
  ...plainWith().course,
  sketches: [
    { hole: 7, green, shapes: [bunker, stream] },
    { hole: 8, shapes: [trees] },
  ],
}

describe('where a shape lies, seen from the tee with the middle of the green at nought', () => {
  const hole = { unit: 'yards', length: 400 } as const

  it('beside the green it begins at the green’s edge and is as long as said about the middle', () => {
    expect(areaOf(bunker, green, hole)).toEqual({ left: -21, right: -13, short: -8, long: 8 })
    expect(areaOf({ ...bunker, side: 'right' }, green, hole)).toEqual({ left: 13, right: 21, short: -8, long: 8 })
    expect(areaOf({ ...bunker, side: 'short' }, green, hole)).toEqual({ left: -8, right: 8, short: -26, long: -18 })
    expect(areaOf({ ...bunker, side: 'long' }, green, hole)).toEqual({ left: -8, right: 8, short: 18, long: 26 })
  })

  it('moves with a green that lies beside the line of play', () => {
    expect(areaOf(bunker, { ...green, right: 10 }, hole)).toMatchObject({ left: -11, right: -3 })
    expect(areaOf({ ...bunker, side: 'long' }, { ...green, right: -4 }, hole)).toMatchObject({ left: -12, right: 4 })
    expect(areaOf(stream, { ...green, right: 10 }, hole)).toMatchObject({ left: -40, right: 40 })
  })

  it('beside the line it is told from the tee or from the middle of the green', () => {
    expect(areaOf(stream, null, hole)).toEqual({ left: -40, right: 40, short: -50, long: -40 })
    expect(areaOf(trees, null, hole)).toEqual({ left: 25, right: 55, short: -220, long: -120 })
    expect(areaOf({ ...trees, side: 'left' }, null, hole)).toMatchObject({ left: -55, right: -25 })
  })

  it('of a hole without a length nothing is told from the tee, from the green everything', () => {
    expect(areaOf(trees, null, { unit: 'yards', length: null })).toBeNull()
    expect(areaOf(stream, null, { unit: 'yards', length: null })).not.toBeNull()
  })

  it('is told in the unit of the hole', () => {
    // 100 yards are 91.44 metres by the agreement of 1959.
    const far = areaOf({ ...stream, distance: 100 }, green, { unit: 'metres', length: 366 })
    expect(far).toMatchObject({ long: -91 })
  })

  it('a new shape begins with a size of its unit', () => {
    expect(usualSize('fairway', { by: 'line', side: 'on' }, 'yards')).toMatchObject({ gap: 0, width: 32 })
    expect(usualSize('fairway', { by: 'line', side: 'on' }, 'metres')).toMatchObject({ gap: 0, width: 29 })
  })
})

describe('the sketch of a hole among the facts', () => {
  const sketch: HoleSketch = { green, shapes: new Map([['002-x' as ShapeId, bunker]]) }

  it('is read hole by hole, its shapes in the order in which they were put in', () => {
    const { sketches } = outingOfPlain(plainWith({ course }))
    expect([...sketches.keys()]).toEqual([7, 8])
    expect(sketches.get(7)?.green).toEqual(green)
    expect([...(sketches.get(7)?.shapes.values() ?? [])]).toEqual([bunker, stream])
    expect(sketches.get(8)?.green).toBeNull()
  })

  it('goes through the plain file and back', () => {
    const file = plainOf(outingOfPlain(plainWith({ course })))
    expect(file?.course.sketches).toEqual(course.sketches)
    expect(plainOf(outingOfPlain(plainWith()))?.course).not.toHaveProperty('sketches')
    expect(parseOutingFile(JSON.stringify(plainWith({ course }))).ok).toBe(true)
  })

  it.each([
    ['a hole that the course lacks', [{ hole: 12 }], 9, 'no such hole'],
    ['a hole twice', [{ hole: 3 }, { hole: 3 }], 18, 'said twice'],
  ])('a file with %s is at fault', (_, sketches, holes, code) => {
    const wrong = plainWith({ length: 9, course: { holes: course.holes.slice(0, holes), sketches }, scores: [] })
    const parsed = parseOutingFile(
      JSON.stringify({ ...wrong, players: [{ id: 'alder', name: 'Alder' }], groups: [], games: [], main: undefined }),
    )
    expect(parsed.ok ? [] : parsed.error).toContainEqual(expect.objectContaining({ code }))
  })

  it('two phones name a new shape each by itself, after those that they see', () => {
    expect(nextShapeId(sketch, 'abc')).toBe('003-abc')
    expect(nextShapeId(sketch, 'abc')).not.toBe(nextShapeId(sketch, 'xyz'))
    expect(nextShapeId({ green: null, shapes: new Map() }, 'a')).toBe('001-a')
  })

  it('each thing is a key of its own, and is taken away by itself or all at once', () => {
    expect(greenSketchFacts(7, green)).toEqual([{ key: 'green/7', value: green }])
    expect(shapeSketchFacts(7, '002-x' as ShapeId, null)).toEqual([{ key: 'shape/7/002-x', value: null }])
    expect(clearedSketchFacts(7, sketch)).toEqual([
      { key: 'green/7', value: null },
      { key: 'shape/7/002-x', value: null },
    ])
  })
})
