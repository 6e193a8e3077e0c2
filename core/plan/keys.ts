import { type Club, isClub } from './clubs.ts'
import type { PlayerFactKind, PlayerKeyParts } from './facts.ts'
import { type Habit, type HabitNumber, habitNumbers, isHabit } from './habits.ts'

/** The keys of a player's log, one row a kind; the word after a colon is a name of a closed list. */
export const playerKeyPatterns: Readonly<Record<PlayerFactKind, string>> = {
  unit: 'unit',
  club: 'club/:club',
  favourite: 'favourite',
  habit: 'habit/:habit',
  habitNumber: 'habit-number/:number',
}

export const playerFactKinds = Object.keys(playerKeyPatterns) as PlayerFactKind[]

/** The one place that makes a player's keys. */
export const playerKeys = {
  unit: 'unit',
  favourite: 'favourite',
  club: (club: Club): string => `club/${club}`,
  habit: (habit: Habit): string => `habit/${habit}`,
  habitNumber: (number: HabitNumber): string => `habit-number/${number}`,
} as const

/** The key's kind and the name in it, or null when it is none of a player's (a newer version's, perhaps). */
export function parsePlayerKey(key: string): PlayerKeyParts | null {
  if (key === 'unit' || key === 'favourite') return { kind: key }
  const [kind, name = '', ...rest] = key.split('/')
  if (rest.length > 0) return null
  if (kind === 'club' && isClub(name)) return { kind, club: name }
  if (kind === 'habit' && isHabit(name)) return { kind, habit: name }
  if (kind === 'habit-number' && isHabitNumber(name)) return { kind: 'habitNumber', number: name }
  return null
}

const isHabitNumber = (text: string): text is HabitNumber => (habitNumbers as readonly string[]).includes(text)
