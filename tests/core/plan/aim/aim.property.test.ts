import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { shapeKinds } from '#core/outing/sketch.ts'
import { bestAim } from '#core/plan/aim/best-aim.ts'
import { sharesOf } from '#core/plan/aim/judged.ts'
import { mirrored, type Shape } from '#core/plan/aim/sketch.ts'
import { type AimCase, rightPin, strokeOf, waterRight } from '../../../kit/aim-case.ts'
import { holeWith } from '../../../kit/plan-holes.ts'
import { holds } from '../../../kit/property.ts'

const near = (least: number, most: number) => fc.integer({ min: least, max: most })
const shape: fc.Arbitrary<Shape> = fc.record({
  kind: fc.constantFrom(...shapeKinds),
  form: fc.constantFrom('oval' as const, 'box' as const),
  rightYd: near(-40, 40),
  beyondYd: near(-50, 40),
  halfWidthYd: near(2, 20),
  halfDepthYd: near(2, 20),
})
const anyCase: fc.Arbitrary<AimCase> = fc.record({
  handicapIndex: near(-5, 36),
  distanceYd: near(60, 200),
  sketch: fc.array(shape, { maxLength: 6 }).map(shapes => holeWith(...shapes)),
  pin: fc.record({ rightYd: near(-8, 8), beyondYd: near(-6, 6) }),
  scale: fc.constantFrom(0.8, 1, 1.2),
  countsShortSide: fc.boolean(),
  mishitShare: fc.constant(null),
})
const aimIn = (of: AimCase) => bestAim(strokeOf(of), of.sketch, of.pin)

describe('for any hole', () => {
  holds(
    'a hole in the mirror has the aim in the mirror, at the same cost',
    anyCase,
    of => {
      const there = aimIn({ ...of, sketch: mirrored(of.sketch), pin: { ...of.pin, rightYd: -of.pin.rightYd } })
      const here = aimIn(of)
      expect(there.best.expected).toBeCloseTo(here.best.expected, 6)
      const costs = here.strip.map(({ cost }) => cost).reverse()
      // Two aims that cost the same lie in two rows, of which the mirror may take the other.
      if (there.best.aim.beyondYd !== here.best.aim.beyondYd) return
      for (const [at, { cost }] of there.strip.entries()) expect(cost).toBeCloseTo(costs[at] ?? Number.NaN, 6)
    },
    60,
  )

  holds(
    'more water on the right never draws the aim to the right',
    fc.record({ of: anyCase, edge: near(14, 30), more: near(1, 10) }),
    ({ of, edge, more }) => {
      const wet = (from: number): AimCase => {
        const water = { ...waterRight, rightYd: from + 60, halfWidthYd: 60, halfDepthYd: 60 }
        return { ...of, sketch: holeWith(water), pin: { ...of.pin, rightYd: Math.min(of.pin.rightYd, 6) } }
      }
      const [less, most] = [aimIn(wet(edge)), aimIn(wet(Math.max(13, edge - more)))]
      expect(most.best.aim.rightYd).toBeLessThanOrEqual(less.best.aim.rightYd + 1)
    },
    60,
  )

  holds(
    'what can become of a stroke adds to one',
    anyCase,
    of => {
      const shares = Object.values(sharesOf(strokeOf(of), of.pin))
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9)
    },
    60,
  )

  holds(
    'without scatter the aim is the pin, whatever lies beside the green',
    anyCase,
    of => {
      const still = { ...rightPin, ...of, sketch: holeWith(waterRight), scale: 0.01, mishitShare: 0 }
      const { best } = aimIn(still)
      expect(Math.hypot(best.aim.rightYd - of.pin.rightYd, best.aim.beyondYd - of.pin.beyondYd)).toBeLessThanOrEqual(
        0.75,
      )
    },
    30,
  )
})
