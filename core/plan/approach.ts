import { type BagClub, longestOf } from './bag.ts'
import type { Plan } from './plan.ts'
import { type Swing, swingThatCarries } from './swing.ts'

/** Where the flag stands on the green, from the player. */
export const pins = ['front', 'middle', 'back'] as const
export type Pin = (typeof pins)[number]

/** A shot at a green: what to play for, the number it plays, and the club for it. */
export interface Approach {
  /** `middle` of the green whatever the pin does; `past` a front pin, `short` of a back one; `number` as it is. */
  readonly aim: 'middle' | 'past' | 'short' | 'number'
  readonly plays: number
  readonly swing: Swing | null
}

/**
 * The number to play for a distance and a pin. Common practice: from the mid-irons on the middle of the green; shorter,
 * a back pin a little short and a front pin a little past, gripping up or down on the same club.
 */
export function approachOf(plan: Plan, distance: number, pin: Pin, among: readonly BagClub[]): Approach {
  const { habits, numbers } = plan
  if (habits.middle && distance >= numbers['mid-iron-border']) return atNumber('middle', distance, distance, among)
  if (habits['pin-depth'] && pin === 'front') {
    const past = distance + numbers['past-front-pin']
    const reach = longestOf(among)?.carry ?? past
    return atNumber('past', Math.max(distance, Math.min(past, reach)), distance, among)
  }
  if (habits['pin-depth'] && pin === 'back') {
    return atNumber('short', Math.max(1, distance - numbers['short-of-back-pin']), distance, among)
  }
  return atNumber('number', distance, distance, among)
}

/** One club for the pin's own number and for the number played, so that only the grip changes between them. */
const atNumber = (aim: Approach['aim'], plays: number, distance: number, among: readonly BagClub[]): Approach => ({
  aim,
  plays,
  swing: swingThatCarries(among, Math.max(plays, distance), plays),
})
