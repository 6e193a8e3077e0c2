import type { Length } from '#core/values/length.ts'

/**
 * The five habits, each of which can be switched off. Common practice:
 * `middle` from the mid-irons on the middle of the green, whatever the pin does; `pin-depth` shorter, a back pin a little
 * short of the number and a front pin a little past it; `lay-up` the same number left every time; `trees` out with the
 * lowest-lofted club that clears; `six-threes` a fresh start every three holes.
 */
export const habits = ['middle', 'pin-depth', 'lay-up', 'trees', 'six-threes'] as const
export type Habit = (typeof habits)[number]

export const isHabit = (text: string): text is Habit => (habits as readonly string[]).includes(text)

/** The numbers inside the habits: from where on the middle, how far past a front pin, how far short of a back one. */
export const habitNumbers = ['mid-iron-border', 'past-front-pin', 'short-of-back-pin'] as const
export type HabitNumber = (typeof habitNumbers)[number]

/** What they are until the player says otherwise. Our own; five yards past and short is common practice. */
export const proposedNumbers: Readonly<Record<HabitNumber, Length>> = {
  'mid-iron-border': { amount: 140, unit: 'yards' },
  'past-front-pin': { amount: 5, unit: 'yards' },
  'short-of-back-pin': { amount: 5, unit: 'yards' },
}
