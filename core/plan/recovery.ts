import type { Bag, BagClub } from './bag.ts'
import { isWood } from './clubs.ts'

/**
 * What to do from the trees, in this order. Common practice: out first, then as far down as is safe. Never towards
 * people, never off a trunk close in front.
 */
export const recoverySteps = [
  'grip-down',
  'ball-back',
  'hands-ahead',
  'weight-forward',
  'finish-low',
  'out-first',
  'far-down',
] as const
export type RecoveryStep = (typeof recoverySteps)[number]

/** Lowest-lofted first; woods are left in the bag (our own). */
export const recoveryClubs = (bag: Bag): readonly BagClub[] => bag.clubs.filter(({ club }) => !isWood(club))

/** The lowest-lofted club that clears what stands in the way, as the player sees it; null where none does. */
export const lowestThatClears = (bag: Bag, clears: (club: BagClub) => boolean): BagClub | null =>
  recoveryClubs(bag).find(clears) ?? null
