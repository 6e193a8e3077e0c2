import { enoughNumbers } from '#core/plan/bag.ts'
import { type Golfer, golferOf } from '#core/plan/golfer.ts'
import { ownShotsOf } from '#core/plan/own-shots.ts'
import type { Plan } from '#core/plan/plan.ts'

/** The player as the numbers know them; null while the Index or the bag is not in. */
export function golferOfPlan(plan: Plan): Golfer | null {
  const { indexTenths, ratings, strike, bag } = plan
  if (indexTenths === null || bag.clubs.length < enoughNumbers) return null
  return golferOf(plan, {
    handicapIndex: indexTenths / 10,
    // Without ratings nothing turns on them: every carry comes from the bag, and what a hole is worth is not said.
    gender: ratings ?? 'men',
    carriesAre: strike,
    own: ownShotsOf(plan),
  })
}
