import type { HoleKey } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'

/** True where a ball takes no part in a hole: before it came, after it left, or all the round. */
export function isAbsent(game: SoundGame, ball: BallId, key: HoleKey): boolean {
  const absence = game.happenings.absences.get(ball)
  if (absence === undefined) return false
  const joinedAt = placeOf(game, ball, absence.joinedAt)
  return (joinedAt !== null && (placeOf(game, ball, key) ?? joinedAt) < joinedAt) || hasLeft(game, ball, key)
}

/** True where a ball takes no part in a hole and in none after it. */
export function hasLeft(game: SoundGame, ball: BallId, key: HoleKey): boolean {
  const absence = game.happenings.absences.get(ball)
  if (absence === undefined) return false
  if (absence.leftAt === null) return absence.joinedAt === null
  const leftAt = placeOf(game, ball, absence.leftAt)
  return leftAt !== null && (placeOf(game, ball, key) ?? -1) >= leftAt
}

/** In the ball's order of play, from 0; null for a hole that is not in it. */
function placeOf(game: SoundGame, ball: BallId, key: HoleKey | null): number | null {
  const place = game.balls.get(ball)?.order.findIndex(hole => hole.key === key) ?? -1
  return place === -1 ? null : place
}

/** Out of the whole game by a ruling. */
export const isDisqualified = ({ happenings }: SoundGame, ball: BallId): boolean =>
  happenings.disqualified.some(each => each.ball === ball && each.hole === null)

/** Out of one hole by a ruling. */
export const isOutOfHole = ({ happenings }: SoundGame, ball: BallId, key: HoleKey): boolean =>
  happenings.disqualified.some(each => each.ball === ball && each.hole === key)
