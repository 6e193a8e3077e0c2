import { isId, type LogId } from '#core/values/ids.ts'
import { type Club, isClub, isPartSwing, type PartSwing } from './clubs.ts'
import { type PlayerFactKind, type PlayerKeyParts, plainKinds } from './facts.ts'
import { type Habit, type HabitNumber, habitNumbers, isHabit } from './habits.ts'

/** The keys of a player's log, one row a kind; the word after a colon is a name of a closed list, a shot's or an outing's id. */
export const playerKeyPatterns: Readonly<Record<PlayerFactKind, string>> = {
  unit: 'unit',
  club: 'club/:club',
  measured: 'measured/:club/:shot',
  spread: 'spread/:club',
  partSwing: 'part-swing/:club/:part',
  strike: 'strike',
  handicapIndex: 'handicap-index',
  ratings: 'ratings',
  favourite: 'favourite',
  habit: 'habit/:habit',
  habitNumber: 'habit-number/:number',
  rulesRound: 'rules-round/:log',
}

export const playerFactKinds = Object.keys(playerKeyPatterns) as PlayerFactKind[]

/** The one place that makes a player's keys. */
export const playerKeys = {
  unit: 'unit',
  favourite: 'favourite',
  strike: 'strike',
  handicapIndex: 'handicap-index',
  ratings: 'ratings',
  club: (club: Club): string => `club/${club}`,
  measured: (club: Club, shot: string): string => `measured/${club}/${shot}`,
  spread: (club: Club): string => `spread/${club}`,
  partSwing: (club: Club, part: PartSwing): string => `part-swing/${club}/${part}`,
  habit: (habit: Habit): string => `habit/${habit}`,
  habitNumber: (number: HabitNumber): string => `habit-number/${number}`,
  rulesRound: (log: LogId): string => `rules-round/${log}`,
} as const

/** The key's kind and the name in it, or null when it is none of a player's (a newer version's, perhaps). */
export function parsePlayerKey(key: string): PlayerKeyParts | null {
  const plain = plainKinds.find(kind => playerKeyPatterns[kind] === key)
  if (plain) return { kind: plain }
  const [kind, name = '', last, ...rest] = key.split('/')
  if (rest.length > 0) return null
  if (last !== undefined) return parseOfClub(kind, name, last)
  if ((kind === 'club' || kind === 'spread') && isClub(name)) return { kind, club: name }
  if (kind === 'habit' && isHabit(name)) return { kind, habit: name }
  if (kind === 'habit-number' && isHabitNumber(name)) return { kind: 'habitNumber', number: name }
  if (kind === 'rules-round' && isId(name)) return { kind: 'rulesRound', log: name as LogId }
  return null
}

function parseOfClub(kind: string | undefined, name: string, last: string): PlayerKeyParts | null {
  if (!isClub(name)) return null
  if (kind === 'measured' && isId(last)) return { kind, club: name, shot: last }
  return kind === 'part-swing' && isPartSwing(last) ? { kind: 'partSwing', club: name, part: last } : null
}

const isHabitNumber = (text: string): text is HabitNumber => (habitNumbers as readonly string[]).includes(text)
