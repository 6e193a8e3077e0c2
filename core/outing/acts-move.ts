import { holeKey, type PlayedHole } from '#core/card/score.ts'
import { groupOfKey } from '#core/log/op.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import type { HoleAndLap, Place } from './facts.ts'
import type { Ball, Group, Outing } from './outing.ts'
import { type NewFact, statedFact } from './stated-fact.ts'

/** A ball goes on with another group from a hole on, in order of play of the group that it leaves. */
export interface Move {
  readonly ball: BallId
  readonly to: GroupId
  readonly from: PlayedHole
}

/**
 * Moves one ball to another group. The holes before, and any behind that its group has written already, stay with the
 * group that played them: no score is written again and none is lost. Empty where it plays there already.
 */
export function moveFacts(outing: Outing, { ball: id, to, from }: Move): NewFact[] {
  const ball = outing.balls.get(id)
  const left = outing.groups.get(ball?.group ?? ('' as GroupId))
  const joined = outing.groups.get(to)
  if (!ball || !left || !joined || left.id === to) return []
  const elsewhere = elsewhereAfter(ball, to, left.id, holesStaying(outing, ball, left, from))
  const position = Math.max(0, ...joined.balls.map(each => outing.balls.get(each)?.position ?? 0)) + 1
  return [statedFact('place', { ball: id }, { group: to, position, elsewhere })]
}

/** The holes that stay with the group that the ball leaves, in order of play. */
export function holesStaying(outing: Outing, ball: Ball, left: Group, from: PlayedHole): readonly PlayedHole[] {
  const order = [...left.round, ...left.extra]
  const start = order.findIndex(at => holeKey(at) === holeKey(from))
  const others = new Set(ball.elsewhere.flatMap(({ holes }) => holes.map(String)))
  return order.filter((at, place) => {
    const isBefore = start === -1 || place < start
    return !others.has(String(pairOf(at))) && (isBefore || isWrittenBy(outing, ball.id, left.id, at))
  })
}

/** The hole from which a ball goes on when nobody says otherwise: the first without a score. */
export function nextHoleOf(outing: Outing, ball: BallId, { round, extra }: Group): PlayedHole | null {
  const isOpen = (at: PlayedHole): boolean =>
    (outing.cards.get(ball)?.scores.get(holeKey(at))?.kind ?? 'none') === 'none'
  return [...round, ...extra].find(isOpen) ?? null
}

function isWrittenBy(outing: Outing, ball: BallId, group: GroupId, at: PlayedHole): boolean {
  const found = outing.cards.get(ball)?.scores.get(holeKey(at))
  if (found === undefined || found.kind === 'none') return false
  return found.entries.some(({ key }) => groupOfKey(key) === group)
}

/** Holes that an earlier move left with the group that it comes back to are its own again. */
function elsewhereAfter(
  { elsewhere }: Ball,
  to: GroupId,
  left: GroupId,
  staying: readonly PlayedHole[],
): Place['elsewhere'] {
  const kept = elsewhere.filter(({ group }) => group !== to)
  if (staying.length === 0) return kept
  const before = kept.find(({ group }) => group === left)?.holes ?? []
  const holes = [...before, ...staying.map(pairOf)]
  return [...kept.filter(({ group }) => group !== left), { group: left, holes }]
}

const pairOf = ({ hole, lap }: PlayedHole): HoleAndLap => [hole, lap]
