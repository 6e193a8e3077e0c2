import { type LogState, standingsOf } from '#core/log/fold.ts'
import type { Json } from '#core/values/json.ts'
import { amountIn, type LengthUnit } from '#core/values/length.ts'
import { bagOf } from './bag.ts'
import { type Club, clubs } from './clubs.ts'
import type { PlayerFactKind, PlayerFactValues } from './facts.ts'
import { habitNumbers, habits, proposedNumbers } from './habits.ts'
import { playerKeys } from './keys.ts'
import type { Plan } from './plan.ts'

/** True when this version understands a value of the kind; the schemas know. */
export type IsKnownPlayerValue = (kind: PlayerFactKind, value: Json) => boolean

/**
 * What a player's log says. Of two values the one of the largest (tick, device, n) is used; what nobody has said is the
 * proposed number, and a habit is on.
 */
export function planOf(state: LogState, isKnown: IsKnownPlayerValue): Plan {
  const read: Read = (kind, key) => {
    const known = standingsOf(state, key).filter(({ value }) => isKnown(kind, value))
    return (known.at(-1)?.value ?? null) as never
  }
  const unit = read('unit', playerKeys.unit) ?? 'yards'
  const said = clubsSaid(read, unit)
  const favourite = read('favourite', playerKeys.favourite)
  return {
    unit,
    said,
    bag: bagOf(said),
    favourite: favourite && amountIn(favourite, unit),
    habits: tableOf(habits, habit => read('habit', playerKeys.habit(habit)) ?? true),
    numbers: tableOf(habitNumbers, number =>
      amountIn(read('habitNumber', playerKeys.habitNumber(number)) ?? proposedNumbers[number], unit),
    ),
  }
}

type Read = <K extends PlayerFactKind>(kind: K, key: string) => PlayerFactValues[K] | null

function clubsSaid(read: Read, unit: LengthUnit): Map<Club, number | null> {
  const said = new Map<Club, number | null>()
  for (const club of clubs) {
    const fact = read('club', playerKeys.club(club))
    if (fact !== null) said.set(club, fact.carry && amountIn(fact.carry, unit))
  }
  return said
}

const tableOf = <Name extends string, Value>(
  names: readonly Name[],
  of: (name: Name) => Value,
): Readonly<Record<Name, Value>> =>
  Object.fromEntries(names.map(name => [name, of(name)])) as unknown as Record<Name, Value>
