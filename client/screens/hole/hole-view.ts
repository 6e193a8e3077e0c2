import { type HoleKey, type HoleScore, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { Levels } from '#core/outing/levels.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { Three } from '#core/outing/results.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { groupsPlaying } from '../../state/own-group.ts'

/** The group that this phone scores for, or the first that anybody plays in. */
export function groupShown(outing: Outing, own: GroupId | null): Group | null {
  const [first] = groupsPlaying(outing)
    .map(({ id }) => id)
    .sort()
  return outing.groups.get(own ?? first ?? ('' as GroupId)) ?? null
}

/** Every hole of the group's order of play, extra holes last. */
export const holesOf = (group: Group): readonly PlayedHole[] => [...group.round, ...group.extra]

export function isLastHole(group: Group, at: PlayedHole): boolean {
  const last = holesOf(group).at(-1)
  return last !== undefined && holeKey(last) === holeKey(at)
}

/** A ball's hole with one score. */
export const isSettled = (outing: Outing, ball: BallId, key: HoleKey): boolean =>
  outing.cards.get(ball)?.scores.get(key)?.kind === 'one'

/** A ball's hole with any score. */
export const isWritten = (outing: Outing, ball: BallId, key: HoleKey): boolean =>
  (outing.cards.get(ball)?.scores.get(key)?.kind ?? 'none') !== 'none'

/** The three that ends with this hole, once it is settled for all these balls and nothing behind it is written. */
export function threeJustClosed(
  outing: Outing,
  levels: Pick<Levels, 'cards'>,
  balls: readonly BallId[],
  at: PlayedHole,
): number | null {
  const key = holeKey(at)
  const threes = levels.cards.get(balls[0] ?? ('' as BallId))?.threes ?? []
  const closed = threes.find(({ holes }) => holes.at(-1) === key)
  const next = closed && threes.find(({ number }) => number === closed.number + 1)
  if (!closed || !next) return null
  const isClosed = closed.holes.every(hole => balls.every(ball => isSettled(outing, ball, hole)))
  const isFresh = next.holes.every(hole => balls.every(ball => !isWritten(outing, ball, hole)))
  return isClosed && isFresh ? closed.number : null
}

export const threeOf = (levels: Pick<Levels, 'cards'>, ball: BallId, number: number): Three | null =>
  levels.cards.get(ball)?.threes.find(three => three.number === number) ?? null

/** The keys round the level, in strokes from it. */
export const keySteps = [-2, -1, 0, 1, 2] as const

/** True for a score that has its key beside the level. */
export const isRoundLevel = (score: HoleScore, level: number): boolean =>
  typeof score === 'number' && keySteps.some(step => level + step === score)
