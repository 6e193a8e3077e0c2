import type { Club, PartSwing } from '#core/plan/clubs.ts'
import type { Strike } from '#core/plan/facts.ts'
import { type Habit, type HabitNumber, habitNumbers, habits } from '#core/plan/habits.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { LengthUnit } from '#core/values/length.ts'

/** A player's bag and habits as a file of their own, for the player to keep. Every length is whole, in `unit`. */
export interface PlayerFile {
  readonly sixThrees: 'player'
  readonly version: 1
  readonly unit: LengthUnit
  readonly strike: Strike
  readonly clubs: readonly PlayerFileClub[]
  /** Null for none. */
  readonly favourite: number | null
  readonly habits: Readonly<Record<Habit, boolean>>
  readonly numbers: Readonly<Record<HabitNumber, number>>
}

export interface PlayerFileClub {
  readonly club: Club
  /** As it was typed; null for a club without a number. */
  readonly carry: number | null
  /** With own shots in it, or worked out from the other clubs; null for want of numbers. */
  readonly used: number | null
  readonly isEstimated: boolean
  readonly measured: readonly number[]
  readonly spread: { readonly spread: number; readonly shots: number } | null
  readonly partSwings: Readonly<Partial<Record<PartSwing, number>>>
}

export const playerFileOf = (plan: Plan): PlayerFile => ({
  sixThrees: 'player',
  version: 1,
  unit: plan.unit,
  strike: plan.strike,
  clubs: [...plan.said].map(([club, carry]) => clubInFile(plan, club, carry)),
  favourite: plan.favourite,
  habits: pick(habits, plan.habits),
  numbers: pick(habitNumbers, plan.numbers),
})

function clubInFile({ bag, shots, spreads, parts }: Plan, club: Club, carry: number | null): PlayerFileClub {
  const found = bag.clubs.find(each => each.club === club)
  return {
    club,
    carry,
    used: found?.carry ?? null,
    isEstimated: found?.isEstimated ?? false,
    measured: [...(shots.get(club)?.values() ?? [])],
    spread: spreads.get(club) ?? null,
    partSwings: Object.fromEntries(parts.get(club) ?? []),
  }
}

const pick = <Name extends string, Value>(names: readonly Name[], of: Readonly<Record<Name, Value>>) =>
  Object.fromEntries(names.map(name => [name, of[name]])) as Readonly<Record<Name, Value>>
