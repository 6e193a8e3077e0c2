import type { LengthUnit } from '#core/values/length.ts'
import type { Bag } from './bag.ts'
import type { Club } from './clubs.ts'
import type { Habit, HabitNumber } from './habits.ts'

/** A player's bag and habits, every length a whole number in the player's own unit. */
export interface Plan {
  readonly unit: LengthUnit
  /** What the player said of each club in the bag: its carry, or null for none. */
  readonly said: ReadonlyMap<Club, number | null>
  readonly bag: Bag
  /** The number that a lay-up leaves; null while none is chosen. */
  readonly favourite: number | null
  readonly habits: Readonly<Record<Habit, boolean>>
  readonly numbers: Readonly<Record<HabitNumber, number>>
}
