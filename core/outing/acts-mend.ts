import type { PlayerId, TeeId } from '#core/values/ids.ts'
import type { CourseHole, Handicap, Tee } from './facts.ts'
import type { Outing } from './outing.ts'
import { factOrNone, type NewFact, statedFact } from './stated-fact.ts'

/**
 * Par and stroke index of a hole as they should have been: the course's, or those of one tee whose card differs. Every game
 * follows; no score moves.
 */
export function mendHoleFacts(outing: Outing, hole: number, value: CourseHole, of: TeeId | null): NewFact[] {
  if (of === null) return [statedFact('hole', { hole }, value)]
  const tee = outing.tees.get(of)
  if (tee === undefined) return []
  const course = [...outing.holes].sort(([a], [b]) => a - b).map(([, each]) => each)
  const put = (list: readonly number[], changed: number): number[] =>
    list.map((each, place) => (place === hole - 1 ? changed : each))
  const pars = tee.pars ?? course.map(({ par }) => par)
  const indexes = tee.indexes ?? course.map(({ index }) => index)
  return [statedFact('tee', { tee: of }, { ...tee, pars: put(pars, value.par), indexes: put(indexes, value.index) })]
}

/** A tee as it should have been, or a new one; null takes it away. */
export const mendTeeFacts = (tee: TeeId, value: Tee | null): NewFact[] => [factOrNone('tee', { tee }, value)]

export const mendNameFacts = (player: PlayerId, name: string): NewFact[] => [statedFact('player', { player }, { name })]

/** The handicap that a player should have had; null where nobody has one of them. */
export const mendHandicapFacts = (player: PlayerId, handicap: Handicap | null): NewFact[] => [
  factOrNone('handicap', { player }, handicap),
]

/** The tee that a player plays from; null for none. */
export const mendPlayersTeeFacts = (player: PlayerId, tee: TeeId | null): NewFact[] => [
  factOrNone('playerTee', { player }, tee),
]
