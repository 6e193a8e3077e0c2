import { type Approach, approachOf } from './approach.ts'
import { type BagClub, clubsOffTheGround, enoughNumbers, longestOf, swingsOf } from './bag.ts'
import { type LayUp, layUpFrom } from './lay-up.ts'
import type { Plan } from './plan.ts'

/** What the bag says of a hole before it is played, by carry alone. `left` is what the tee shot leaves to the green. */
export type HolePlan =
  /** Fewer than three clubs have a number. */
  | { readonly kind: 'few-clubs' }
  /** `tee` is null where the first shot goes at the green. */
  | { readonly kind: 'green'; readonly tee: BagClub | null; readonly left: number; readonly approach: Approach }
  /** No club reaches after the longest tee shot; `layUp` is null where that habit is off. */
  | { readonly kind: 'lay-up'; readonly tee: BagClub | null; readonly left: number; readonly layUp: LayUp | null }

/**
 * From par and length in the player's unit, with the pin taken in the middle. A par 3 is one shot; on any other hole the
 * longest club goes first and the longest off the ground is asked whether it reaches. Our own rule for a habit of common
 * practice: where no club reaches, lay up.
 */
export function holePlan(plan: Plan, par: number, length: number): HolePlan {
  const all = plan.bag.clubs
  const longest = longestOf(all)
  if (longest === null || all.length < enoughNumbers) return { kind: 'few-clubs' }
  const tee = par > 3 && longest.carry < length ? longest : null
  const left = length - (tee?.carry ?? 0)
  const among = tee === null ? swingsOf(plan.bag) : clubsOffTheGround(plan.bag)
  const reach = longestOf(among)?.carry ?? 0
  if (left <= reach) return { kind: 'green', tee, left, approach: approachOf(plan, left, 'middle', among) }
  return { kind: 'lay-up', tee, left, layUp: plan.habits['lay-up'] ? layUpFrom(left, plan.favourite, among) : null }
}
