import { describe, expect, test } from 'vitest'
import {
  amountsOf,
  amountsWith,
  holeDrawn,
  newShape,
  shapesDrawn,
  toldFrom,
} from '#client/screens/sketch/sketch-view.ts'
import { shapeLine, sketchLines } from '#client/words/sketch-text.ts'
import type { ShapeSketch } from '#core/outing/sketch.ts'
import type { BallId, ShapeId } from '#core/values/ids.ts'
import { outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const hole = { unit: 'yards', length: 400 } as const
const noLength = { unit: 'yards', length: null } as const

describe('a new shape', () => {
  test('beside the line is told from the tee and ends before the green, of a hole without a length from the green', () => {
    const fairway = newShape('fairway', { by: 'line', side: 'on' }, { unit: 'yards', length: 250 })
    expect(fairway).toMatchObject({ from: 'tee', distance: 90, length: 160 })
    expect(newShape('water', { by: 'line', side: 'on' }, noLength)).toMatchObject({ from: 'green' })
  })

  test('told from the other end it lies where it lay', () => {
    const trees = newShape('trees', { by: 'line', side: 'left' }, hole) as Extract<ShapeSketch, { by: 'line' }>
    const other = toldFrom(trees, 'green', hole)
    expect(other).toMatchObject({ from: 'green', distance: 400 - trees.distance - trees.length })
    const drawnAs = (shape: ShapeSketch) =>
      shapesDrawn({ green: null, shapes: new Map([['001' as ShapeId, shape]]) }, hole)
    expect(drawnAs(other)).toEqual(drawnAs(trees))
  })
})

describe('the figures that a tap puts in', () => {
  test('have the one that stands among them, in order', () => {
    expect(amountsWith([10, 20], 17)).toEqual([10, 17, 20])
    expect(amountsWith([10, 20], null)).toEqual([10, 20])
  })

  test('lie on the hole, and what is on the line has no gap to it', () => {
    const water = newShape('water', { by: 'line', side: 'on' }, { unit: 'yards', length: 162 })
    expect(Math.max(...amountsOf(water, { unit: 'yards', length: 162 }).distance)).toBeLessThan(162)
    expect(amountsOf(water, hole).gap).toEqual([])
    expect(amountsOf(newShape('bunker', { by: 'green', side: 'left' }, hole), hole).distance).toEqual([])
  })
})

test('a hole is as long as its player’s tee says, else as the first tee with lengths', () => {
  const outing = outingOfPlain(plainWith())
  expect(holeDrawn(outing, 'alder' as BallId, 2)).toEqual({ unit: 'yards', length: 492 })
  expect(holeDrawn(outing, null, 2)).toEqual({ unit: 'yards', length: 492 })
  const { course } = plainWith()
  const bare = outingOfPlain(plainWith({ course: { ...course, tees: [{ id: 'white', name: 'White' }] } }))
  expect(holeDrawn(bare, 'alder' as BallId, 2)).toEqual({ unit: 'yards', length: null })
})

test('a sketch is told in sentences', () => {
  const bunker: ShapeSketch = { kind: 'bunker', unit: 'yards', gap: 3, width: 8, length: 15, by: 'green', side: 'left' }
  expect(shapeLine(bunker)).toBe('Bunker left of the green: 3 from its edge, 8 wide, 15 long')
  const green = { unit: 'metres', width: 20, depth: 30, right: 0 } as const
  expect(sketchLines({ green, shapes: new Map([['001' as ShapeId, bunker]]) })).toBe(
    'Green: 20 wide, 30 deep, in metres. Bunker left of the green: 3 from its edge, 8 wide, 15 long.',
  )
})
