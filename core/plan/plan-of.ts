import { keysOf, type LogState, standingsOf } from '#core/log/fold.ts'
import { type Measured, measuredOf } from '#core/plan/spread/own-figures.ts'
import type { LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { amountIn, type LengthUnit } from '#core/values/length.ts'
import { bagOf } from './bag.ts'
import { type Club, clubs, type PartSwing, partSwings } from './clubs.ts'
import type { PlayerFactKind, PlayerFactValues } from './facts.ts'
import { habitNumbers, habits, proposedNumbers } from './habits.ts'
import { parsePlayerKey, playerKeys } from './keys.ts'
import { bothMeasured, measuredFrom, noShots, type SaidSpread } from './own-shots.ts'
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
  const own = ownFigures(state, read, unit, said)
  return {
    unit,
    said,
    ...own,
    strike: read('strike', playerKeys.strike) ?? 'good-strike',
    bag: bagOf(said, { unit, ...own }),
    indexTenths: read('handicapIndex', playerKeys.handicapIndex),
    ratings: read('ratings', playerKeys.ratings),
    favourite: favourite && amountIn(favourite, unit),
    habits: tableOf(habits, habit => read('habit', playerKeys.habit(habit)) ?? true),
    numbers: tableOf(habitNumbers, number =>
      amountIn(read('habitNumber', playerKeys.habitNumber(number)) ?? proposedNumbers[number], unit),
    ),
    rulesRounds: rulesRoundsIn(state),
  }
}

type Read = <K extends PlayerFactKind>(kind: K, key: string) => PlayerFactValues[K] | null

function ownFigures(
  state: LogState,
  read: Read,
  unit: LengthUnit,
  said: ReadonlyMap<Club, number | null>,
): Pick<Plan, 'shots' | 'spreads' | 'parts' | 'measured'> {
  const shots = shotsOf(state, read, unit)
  const spreads = new Map<Club, SaidSpread>()
  const parts = new Map<Club, Map<PartSwing, number>>()
  for (const club of clubs) {
    const spread = read('spread', playerKeys.spread(club))
    if (spread !== null) spreads.set(club, { spread: amountIn(spread.spread, unit), shots: spread.shots })
    for (const part of partSwings) {
      const carry = read('partSwing', playerKeys.partSwing(club, part))
      if (carry !== null) parts.set(club, (parts.get(club) ?? new Map()).set(part, amountIn(carry, unit)))
    }
  }
  return { shots, spreads, parts, measured: measuredByClub(said, shots, spreads) }
}

/** Every shot has a key of its own: two of them, put in on two phones, are two. */
function shotsOf(state: LogState, read: Read, unit: LengthUnit): Plan['shots'] {
  const shots = new Map<Club, Map<string, number>>()
  for (const key of [...keysOf(state)].sort()) {
    const parts = parsePlayerKey(key)
    const carry = parts?.kind === 'measured' ? read('measured', key) : null
    if (parts?.kind !== 'measured' || carry === null) continue
    shots.set(parts.club, (shots.get(parts.club) ?? new Map()).set(parts.shot, amountIn(carry, unit)))
  }
  return shots
}

/** A spread says something about a number alone. */
function measuredByClub(
  said: ReadonlyMap<Club, number | null>,
  shots: Plan['shots'],
  spreads: Plan['spreads'],
): Plan['measured'] {
  const found = new Map<Club, Measured>()
  for (const club of clubs) {
    const [carry, spread] = [said.get(club) ?? null, spreads.get(club)]
    const typed = spread === undefined || carry === null ? noShots : measuredFrom(carry, spread)
    const both = bothMeasured(typed, measuredOf([...(shots.get(club)?.values() ?? [])]))
    if (both.shots > 0) found.set(club, both)
  }
  return found
}

/** Whatever the value: where one of two phones says that the round goes on, it does. */
const rulesRoundsIn = (state: LogState): LogId[] =>
  keysOf(state).flatMap(key => {
    const parts = parsePlayerKey(key)
    return parts?.kind === 'rulesRound' ? [parts.log] : []
  })

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
