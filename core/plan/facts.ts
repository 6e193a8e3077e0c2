import type { Length, LengthUnit } from '#core/values/length.ts'
import type { Club } from './clubs.ts'
import type { Habit, HabitNumber } from './habits.ts'

/**
 * Every kind of fact of a player's own log, with the shape of its value. They are no facts of an outing: their keys are
 * a table of their own (`keys.ts`), so that nothing of a player's can stand in an outing's log.
 */
export interface PlayerFactValues {
  /** What the player counts in. */
  readonly unit: LengthUnit
  /** A club that is in the bag, with its carry; null where the player has no number for it. Withdrawn when it is taken out. */
  readonly club: { readonly carry: Length | null }
  /** The number that a lay-up leaves. */
  readonly favourite: Length
  /** Whether a habit is on. */
  readonly habit: boolean
  readonly habitNumber: Length
}

export type PlayerFactKind = keyof PlayerFactValues

/** A key taken apart: its kind and the name in it. */
export type PlayerKeyParts =
  | { readonly kind: 'unit' | 'favourite' }
  | { readonly kind: 'club'; readonly club: Club }
  | { readonly kind: 'habit'; readonly habit: Habit }
  | { readonly kind: 'habitNumber'; readonly number: HabitNumber }
