import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { openHole } from '#core/plan/aim/sketch.ts'
import { usualAssumptions } from '#core/plan/assumptions.ts'
import { goOrLayUp } from '#core/plan/choice/go-or-lay-up.ts'
import { layUpSweep } from '#core/plan/choice/lay-up-sweep.ts'
import { type GolferSays, golferOf, longestCarryYd, spreadWith } from '#core/plan/golfer.ts'
import { measuredOf } from '#core/plan/spread/own-figures.ts'
import { situationAt } from '../../../kit/plan-holes.ts'
import { anyPlan, makePlan } from '../../../kit/player-plan.ts'
import { holds } from '../../../kit/property.ts'

const says: fc.Arbitrary<GolferSays> = fc.record({
  handicapIndex: fc.integer({ min: -5, max: 54 }),
  gender: fc.constantFrom('men' as const, 'women' as const),
  carriesAre: fc.constantFrom('good-strike' as const, 'average' as const),
  own: fc.constant(new Map()),
})

describe('for any bag', () => {
  holds(
    'no choice asks for a carry that no club of the bag has',
    fc.record({ plan: anyPlan, says, distanceYd: fc.integer({ min: 40, max: 320 }) }),
    ({ plan, says: said, distanceYd }) => {
      const golfer = golferOf(plan, said)
      const longest = longestCarryYd(golfer, 'fairway')
      const at = situationAt(golfer, distanceYd, openHole(500))
      for (const { leavesYd, club } of layUpSweep(at, usualAssumptions)) {
        expect(club.club).not.toBe('driver')
        expect(distanceYd - leavesYd).toBeLessThanOrEqual(club.carryYd)
      }
      const found = goOrLayUp(at)
      expect(found.kind).toBe(distanceYd <= longest ? 'reachable' : 'not-reachable')
      if (found.kind === 'reachable') expect(found.club.carryYd).toBeGreaterThanOrEqual(distanceYd)
    },
    40,
  )

  holds(
    'a golfer has every club of the bag with a carry in yards, those without enough numbers marked',
    fc.record({ plan: anyPlan, says }),
    ({ plan, says: said }) => {
      const { clubs } = golferOf(plan, said)
      if (plan.said.size > 0) expect(clubs.map(({ club }) => club).sort()).toEqual([...plan.said.keys()].sort())
      for (const { carryYd } of clubs) expect(carryYd).toBeGreaterThan(0)
    },
    500,
  )

  holds(
    'own shots to the right move the aim’s middle right, wide ones widen it',
    fc.record({ says, right: fc.integer({ min: 1, max: 15 }), wide: fc.integer({ min: 20, max: 60 }) }),
    ({ says: said, right, wide }) => {
      const shots = Array.from({ length: 30 }, (_, at) => (at % 2 === 0 ? right - wide : right + wide))
      const own = { carry: measuredOf(shots.map(() => 145)), side: measuredOf(shots), mishits: 3 }
      const [mine, usual] = [new Map([['iron-7' as const, own]]), new Map()].map(each => {
        const golfer = golferOf(makePlan(), { ...said, own: each })
        const club = golfer.clubs.find(found => found.club === 'iron-7')
        if (club === undefined) throw new Error('it is in the bag')
        return spreadWith(golfer, club, 'fairway', 140, 1)
      })
      expect(mine?.sideBiasYd).toBeGreaterThan(0)
      expect(mine?.sideSdYd).toBeGreaterThan(usual?.sideSdYd ?? 0)
      expect(mine?.lengthSdYd).toBeLessThan(usual?.lengthSdYd ?? 0)
    },
    100,
  )
})
