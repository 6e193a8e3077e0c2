import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { nextAdvice } from '#core/plan/advice/hole-advice.ts'
import { shotAdvice } from '#core/plan/advice/shot-advice.ts'
import { openHole, pinSides } from '#core/plan/aim/sketch.ts'
import { pins } from '#core/plan/approach.ts'
import { clubForYd, type Golfer } from '#core/plan/golfer.ts'
import { situationAt } from '../../../kit/plan-holes.ts'
import { holds } from '../../../kit/property.ts'
import { usualGolfer } from '../../../kit/usual-golfer.ts'

const golfers: fc.Arbitrary<Golfer> = fc
  .tuple(fc.integer({ min: -5, max: 54 }), fc.constantFrom('men' as const, 'women' as const))
  .map(([index, gender]) => usualGolfer(index, gender))

describe('for any golfer', () => {
  holds(
    'lengths and carries that grow alike leave the club, and whether to go, as they were',
    fc.record({
      golfer: golfers,
      distanceYd: fc.integer({ min: 40, max: 260 }),
      factor: fc.constantFrom(0.5, 0.75, 1.25, 1.5, 2),
    }),
    ({ golfer, distanceYd, factor }) => {
      const longer = {
        ...golfer,
        clubs: golfer.clubs.map(each => ({ ...each, carryYd: each.carryYd * factor, rollYd: each.rollYd * factor })),
      }
      const here = clubForYd(golfer, 'fairway', distanceYd, 1)
      expect(clubForYd(longer, 'fairway', distanceYd * factor, 1)?.club).toBe(here?.club)
      const [one, other] = [
        nextAdvice(situationAt(golfer, distanceYd, openHole(600)), null),
        nextAdvice(situationAt(longer, distanceYd * factor, openHole(600)), null),
      ]
      expect(one.kind === 'green').toBe(other.kind === 'green')
    },
    60,
  )

  holds(
    'the ball in hand is never played with a club that does not carry what it is hit for',
    fc.record({
      golfer: golfers,
      distanceYd: fc.integer({ min: 20, max: 260 }),
      pinDepth: fc.constantFrom(...pins),
      pinSide: fc.constantFrom(...pinSides),
      lie: fc.constantFrom('fairway' as const, 'rough' as const, 'sand' as const),
      dayPercent: fc.integer({ min: -15, max: 15 }),
      riseYd: fc.integer({ min: -15, max: 15 }),
    }),
    ({ golfer, ...of }) => {
      const said = shotAdvice({ golfer, ...of, sketch: null, gap: null, favouriteYd: 100 })
      if (said.kind !== 'green') return
      expect(said.club.club).not.toBe('driver')
      expect(said.club.carryYd).toBeGreaterThanOrEqual(said.targetYd)
      expect(said.aim.flagCost).toBeGreaterThanOrEqual(0)
      expect(said.picture.strokes).toHaveLength(10)
    },
    60,
  )
})
