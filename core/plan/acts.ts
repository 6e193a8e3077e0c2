import type { RatedGender } from '#core/handicap/slope.ts'
import { withdrawn } from '#core/log/op.ts'
import type { NewFact } from '#core/outing/stated-fact.ts'
import type { LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { Length, LengthUnit } from '#core/values/length.ts'
import { type Club, type PartSwing, proposedClubs } from './clubs.ts'
import type { Strike } from './facts.ts'
import type { Habit, HabitNumber } from './habits.ts'
import { playerKeys } from './keys.ts'
import type { SaidSpread } from './own-shots.ts'
import type { Plan } from './plan.ts'

const json = (length: Length): Json => ({ amount: length.amount, unit: length.unit })

/** A length in the player's unit; null takes it away. */
const lengthSaid = ({ unit }: Plan, amount: number | null): Json =>
  amount === null ? withdrawn : json({ amount, unit })

/** A club in the bag with its carry, or without a number. */
const clubFact = (club: Club, carry: Length | null): NewFact => ({
  key: playerKeys.club(club),
  value: { carry: carry && json(carry) },
})

/** A club put in. The first one brings the proposed clubs with it, in one act. */
export function clubPutIn({ said, unit }: Plan, club: Club, carry: number | null): NewFact[] {
  const others = said.size > 0 ? [] : proposedClubs.filter(each => each !== club)
  return [clubFact(club, carry === null ? null : { amount: carry, unit }), ...others.map(each => clubFact(each, null))]
}

/** A club taken out. Before anything was put in it leaves the rest of the proposed ones. */
export function clubTakenOut({ said }: Plan, club: Club): NewFact[] {
  if (said.has(club)) return [{ key: playerKeys.club(club), value: withdrawn }]
  return said.size > 0 ? [] : proposedClubs.filter(each => each !== club).map(each => clubFact(each, null))
}

/** What is said of a club puts it in where it is not yet in. */
const ofClub = (plan: Plan, club: Club, fact: NewFact): NewFact[] =>
  plan.said.has(club) ? [fact] : [...clubPutIn(plan, club, null), fact]

/** One measured carry, or null where it was no such shot. */
export const shotMeasured = (plan: Plan, club: Club, shot: string, carry: number | null): NewFact[] =>
  ofClub(plan, club, {
    key: playerKeys.measured(club, shot),
    value: lengthSaid(plan, carry),
  })

/** How a club's carries fall, from so many shots; null where nothing is said of it any more. */
export const spreadSaid = (plan: Plan, club: Club, said: SaidSpread | null): NewFact[] =>
  ofClub(plan, club, {
    key: playerKeys.spread(club),
    value: said && { spread: json({ amount: said.spread, unit: plan.unit }), shots: said.shots },
  })

export const partSwingSaid = (plan: Plan, club: Club, part: PartSwing, carry: number | null): NewFact[] =>
  ofClub(plan, club, {
    key: playerKeys.partSwing(club, part),
    value: lengthSaid(plan, carry),
  })

export const strikeChosen = (strike: Strike): NewFact[] => [{ key: playerKeys.strike, value: strike }]

/** The player is in a round under the Rules in that outing, or is so no more. */
export const rulesRoundSaid = ({ rulesRounds }: Plan, log: LogId, isIn: boolean): NewFact[] =>
  rulesRounds.includes(log) === isIn ? [] : [{ key: playerKeys.rulesRound(log), value: isIn ? true : withdrawn }]

export const unitChosen = (unit: LengthUnit): NewFact[] => [{ key: playerKeys.unit, value: unit }]

/** The Handicap Index in tenths; null where the player says none any more. */
export const indexSaid = (tenths: number | null): NewFact[] => [
  { key: playerKeys.handicapIndex, value: tenths ?? withdrawn },
]

export const ratingsChosen = (ratings: RatedGender): NewFact[] => [{ key: playerKeys.ratings, value: ratings }]

/** The number that a lay-up leaves; null for none. */
export const favouriteChosen = (plan: Plan, amount: number | null): NewFact[] => [
  { key: playerKeys.favourite, value: lengthSaid(plan, amount) },
]

export const habitSwitched = (habit: Habit, isOn: boolean): NewFact[] => [{ key: playerKeys.habit(habit), value: isOn }]

export const habitNumberChosen = ({ unit }: Plan, number: HabitNumber, amount: number): NewFact[] => [
  { key: playerKeys.habitNumber(number), value: json({ amount, unit }) },
]
