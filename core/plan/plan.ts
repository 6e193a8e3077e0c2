import type { RatedGender } from '#core/handicap/slope.ts'
import type { Measured } from '#core/plan/spread/own-figures.ts'
import type { LogId } from '#core/values/ids.ts'
import type { LengthUnit } from '#core/values/length.ts'
import type { Bag } from './bag.ts'
import type { Club, PartSwing } from './clubs.ts'
import type { Strike } from './facts.ts'
import type { Habit, HabitNumber } from './habits.ts'
import type { SaidSpread } from './own-shots.ts'

/** A player's bag and habits, every length a whole number in the player's own unit. */
export interface Plan {
  readonly unit: LengthUnit
  /** What the player said of each club in the bag: its carry, or null for none. */
  readonly said: ReadonlyMap<Club, number | null>
  /** Single carries that the player measured, by the names of the shots. */
  readonly shots: ReadonlyMap<Club, ReadonlyMap<string, number>>
  readonly spreads: ReadonlyMap<Club, SaidSpread>
  readonly parts: ReadonlyMap<Club, ReadonlyMap<PartSwing, number>>
  /** Shots and spread of a club as one. */
  readonly measured: ReadonlyMap<Club, Measured>
  /** What the numbers of the bag are. */
  readonly strike: Strike
  readonly bag: Bag
  /** The Handicap Index in tenths, as the player says it; null while it is not in. */
  readonly indexTenths: number | null
  /** Whose ratings the player plays by; null until it is said. */
  readonly ratings: RatedGender | null
  /** The number that a lay-up leaves; null while none is chosen. */
  readonly favourite: number | null
  readonly habits: Readonly<Record<Habit, boolean>>
  readonly numbers: Readonly<Record<HabitNumber, number>>
  /** The outings in which the player is in a round under the Rules now. */
  readonly rulesRounds: readonly LogId[]
}
