import { type Approach, approachOf, type Pin } from './approach.ts'
import { type BagClub, clubsOffTheGround, enoughNumbers, longestOf } from './bag.ts'
import { type LayUp, layUpFrom } from './lay-up.ts'
import type { Plan } from './plan.ts'

/** Advice for the shot in hand. Not for play under the Rules. */
export type ShotNote =
  | { readonly kind: 'green'; readonly approach: Approach }
  /** No club of the bag reaches off the ground; `layUp` is null where that habit is off. */
  | { readonly kind: 'lay-up'; readonly longest: BagClub; readonly layUp: LayUp | null }

/** For a distance off the ground, and a pin. A bag with too few numbers rules nothing out. */
export function shotNote(plan: Plan, distance: number, pin: Pin): ShotNote {
  const among = clubsOffTheGround(plan.bag)
  const longest = longestOf(among)
  if (longest === null || plan.bag.clubs.length < enoughNumbers || distance <= longest.carry) {
    return { kind: 'green', approach: approachOf(plan, distance, pin, among) }
  }
  return {
    kind: 'lay-up',
    longest,
    layUp: plan.habits['lay-up'] ? layUpFrom(distance, plan.favourite, among) : null,
  }
}
