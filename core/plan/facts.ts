import type { RatedGender } from '#core/handicap/slope.ts'
import type { LogId } from '#core/values/ids.ts'
import type { Length, LengthUnit } from '#core/values/length.ts'
import type { Club, PartSwing } from './clubs.ts'
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
  /** A carry that the player measured with a club, one shot. */
  readonly measured: Length
  /** How a club's carries fall about its number: their standard deviation, from so many shots. */
  readonly spread: { readonly spread: Length; readonly shots: number }
  /** The carry of a part swing. */
  readonly partSwing: Length
  /** Whether the numbers of the bag are good strikes, or averages with the mishits in them. */
  readonly strike: Strike
  /** The player's Handicap Index as they say it, in tenths; negative for a plus Index. */
  readonly handicapIndex: number
  /** Whose ratings the player plays by. */
  readonly ratings: RatedGender
  /** The number that a lay-up leaves. */
  readonly favourite: Length
  /** Whether a habit is on. */
  readonly habit: boolean
  readonly habitNumber: Length
  /** The player is in a round under the Rules in that outing: no phone of theirs advises on a shot. Withdrawn when it is over. */
  readonly rulesRound: true
}

/** A good strike is what players mean by a club's number, and holds unless they say otherwise. */
export const strikes = ['good-strike', 'average'] as const
export type Strike = (typeof strikes)[number]

/** Kinds of which a player has one, their keys without a name. */
export const plainKinds = ['unit', 'favourite', 'strike', 'handicapIndex', 'ratings'] as const

export type PlayerFactKind = keyof PlayerFactValues

/** A key taken apart: its kind and the name in it. */
export type PlayerKeyParts =
  | { readonly kind: (typeof plainKinds)[number] }
  | { readonly kind: 'club' | 'spread'; readonly club: Club }
  | { readonly kind: 'measured'; readonly club: Club; readonly shot: string }
  | { readonly kind: 'partSwing'; readonly club: Club; readonly part: PartSwing }
  | { readonly kind: 'habit'; readonly habit: Habit }
  | { readonly kind: 'habitNumber'; readonly number: HabitNumber }
  | { readonly kind: 'rulesRound'; readonly log: LogId }
