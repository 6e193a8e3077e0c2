import { describe, expect, test } from 'vitest'
import { golferOfPlan } from '#client/screens/bag/golfer-of-plan.ts'
import { bagOf } from '#core/plan/bag.ts'
import type { Club } from '#core/plan/clubs.ts'
import { makePlan } from '#tests/kit/player-plan.ts'

const two = new Map<Club, number | null>([
  ['driver', 215],
  ['iron-7', 145],
])

describe('the player as the numbers know them', () => {
  test('needs an Index and three numbers', () => {
    expect(golferOfPlan(makePlan())).toBeNull()
    expect(golferOfPlan(makePlan({ indexTenths: 184, said: two, bag: bagOf(two) }))).toBeNull()
    expect(golferOfPlan(makePlan({ indexTenths: 184 }))).toMatchObject({ handicapIndex: 18.4 })
    expect(golferOfPlan(makePlan({ indexTenths: -13 }))).toMatchObject({ handicapIndex: -1.3 })
  })

  test('carries what the bag says, so that nothing turns on ratings that are not said', () => {
    const [none, women] = [null, 'women' as const].map(ratings => golferOfPlan(makePlan({ indexTenths: 184, ratings })))
    expect(none?.clubs).toEqual(women?.clubs)
    expect(none?.clubs.find(({ club }) => club === 'iron-7')?.carryYd).toBe(145)
  })
})
