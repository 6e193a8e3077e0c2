import type { PlayedHole } from '#core/card/score.ts'
import type { BallId, PlayerId } from '#core/values/ids.ts'
import type { FactValues } from './facts.ts'
import type { Outing } from './outing.ts'
import { groupSpeakingFor } from './speaker.ts'
import { factOrNone, type NewFact } from './stated-fact.ts'

export interface BallOnHole extends PlayedHole {
  readonly ball: BallId
}

/** Whose drive a ball of several players used; null takes it away. */
export const driveFacts = (outing: Outing, at: BallOnHole, player: PlayerId | null): NewFact[] =>
  factsOnHole(outing, 'drive', at, player)

/** The partner who tees off on a hole of foursomes, in turn with the other from there; null takes it away. */
export const teeShotFacts = (outing: Outing, at: BallOnHole, player: PlayerId | null): NewFact[] =>
  factsOnHole(outing, 'teeShot', at, player)

/** The most likely score of a ball picked up, for handicapping alone; null takes it away. */
export const likelyScoreFacts = (outing: Outing, at: BallOnHole, score: number | null): NewFact[] =>
  factsOnHole(outing, 'likelyScore', at, score)

/** Who keeps the marker's record of a ball; null for nobody. */
export const markerFacts = (outing: Outing, ball: BallId, marker: PlayerId | null): NewFact[] =>
  factsOfRound(outing, 'marker', ball, marker)

/** A ball comes late: `at` is the first hole it takes part in. */
export const joinFacts = (outing: Outing, ball: BallId, at: PlayedHole, reason: string | null): NewFact[] =>
  absenceFacts(outing, ball, { joinedAt: [at.hole, at.lap], reason })

/** A ball leaves: `at` is the first hole it takes no part in any more. */
export const leaveFacts = (outing: Outing, ball: BallId, at: PlayedHole, reason: string | null): NewFact[] =>
  absenceFacts(outing, ball, { leftAt: [at.hole, at.lap], reason })

/** A ball is withdrawn from the round, from a hole on or (null) before its first. */
export const withdrawFacts = (outing: Outing, ball: BallId, at: PlayedHole | null, reason: string | null): NewFact[] =>
  absenceFacts(outing, ball, { leftAt: at && [at.hole, at.lap], isWithdrawn: true, reason })

/** A ball that did not come: it takes part in no hole. */
export const noShowFacts = (outing: Outing, ball: BallId, reason: string | null): NewFact[] =>
  factsOfRound(outing, 'absence', ball, { joinedAt: null, leftAt: null, isWithdrawn: false, reason })

/** A ball is there for the whole round after all. */
export const presentFacts = (outing: Outing, ball: BallId): NewFact[] => factsOfRound(outing, 'absence', ball, null)

/** What stands of an absence goes on; a late comer may leave early. */
function absenceFacts(outing: Outing, ball: BallId, change: Partial<FactValues['absence']>): NewFact[] {
  const before = outing.notes.absences.get(ball)
  const pairOf = (key: string | null | undefined) => {
    const [hole = 0, lap = 0] = (key ?? '').split('/').map(Number)
    return key ? ([hole, lap] as const) : null
  }
  const value = { joinedAt: pairOf(before?.joinedAt), leftAt: pairOf(before?.leftAt), isWithdrawn: false, reason: null }
  return factsOfRound(outing, 'absence', ball, { ...value, ...change })
}

/** A hole that nobody can play counts nothing or net par; null puts it back into play. */
export const holeOutFacts = (at: PlayedHole, value: FactValues['holeOut'] | null): NewFact[] => [
  factOrNone('holeOut', { hole: at.hole, lap: at.lap }, value),
]

/** The day's playing conditions as the association gave them; null where it has not. */
export const playingConditionsFacts = (value: FactValues['playingConditions'] | null): NewFact[] => [
  factOrNone('playingConditions', {}, value),
]

function factsOnHole<K extends 'drive' | 'teeShot' | 'likelyScore'>(
  { balls }: Outing,
  kind: K,
  { ball, hole, lap }: BallOnHole,
  value: FactValues[K] | null,
): NewFact[] {
  const group = groupSpeakingFor(balls, ball, { hole, lap })
  return group === null ? [] : [factOrNone(kind, { group, ball, hole, lap }, value)]
}

/** Said by the group that a ball plays in; empty for a ball in none. */
export function factsOfRound<K extends 'marker' | 'absence' | 'certifiedByPlayer' | 'certifiedByMarker'>(
  { balls }: Outing,
  kind: K,
  ball: BallId,
  value: FactValues[K] | null,
): NewFact[] {
  const group = groupSpeakingFor(balls, ball, null)
  return group === null ? [] : [factOrNone(kind, { group, ball }, value)]
}
