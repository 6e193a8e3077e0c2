import { describe, expect, it } from 'vitest'
import { outcomes } from '#core/plan/aim/ground.ts'
import { mirrored } from '#core/plan/aim/sketch.ts'
import { tenStrokes, tenths } from '#core/plan/picture/ten-strokes.ts'
import { type AimCase, rightPin, strokeOf, waterRight } from '../../../kit/aim-case.ts'
import { holeWith } from '../../../kit/plan-holes.ts'

const atFlag: AimCase = { ...rightPin, handicapIndex: 18, sketch: holeWith(waterRight) }

describe('ten short strokes', () => {
  it('are ten, from left to right, as many of each outcome as are counted', () => {
    const { strokes, counts } = tenStrokes(strokeOf(atFlag), atFlag.pin)
    expect(strokes).toHaveLength(10)
    const right = strokes.map(({ rightYd }) => rightYd)
    expect(right).toEqual([...right].sort((a, b) => a - b))
    for (const outcome of outcomes) {
      expect(strokes.filter(each => each.outcome === outcome)).toHaveLength(counts[outcome])
    }
    expect(counts.water).toBeGreaterThanOrEqual(2)
    for (const { outcome, rightYd } of strokes) if (outcome === 'water') expect(rightYd).toBeGreaterThan(15)
  })

  it('are the same every time, and mirrored in a mirror', () => {
    const mirror = { ...atFlag, sketch: mirrored(atFlag.sketch), pin: { rightYd: -9, beyondYd: 0 } }
    const [here, again, there] = [atFlag, atFlag, mirror].map(of => tenStrokes(strokeOf(of), of.pin))
    expect(again).toEqual(here)
    expect(there?.counts).toEqual(here?.counts)
  })

  it('count by the largest remainders, and always to ten', () => {
    const shares = { green: 0.34, fairway: 0, rough: 0.33, sand: 0.33, recovery: 0, water: 0, 'out-of-bounds': 0 }
    expect(tenths(shares)).toMatchObject({ green: 4, rough: 3, sand: 3 })
  })
})
