import { type HoleKey, holeKey } from '#core/card/score.ts'
import { orderOfBall } from './game-input-of.ts'
import type { Ball, Outing } from './outing.ts'

/** Holes of its order of play that a ball takes no part in. */
export function holesAbsent(outing: Outing, ball: Ball): ReadonlySet<HoleKey> {
  const absence = outing.notes.absences.get(ball.id)
  if (absence === undefined) return new Set()
  const { round, extra } = orderOfBall(outing, ball)
  const keys = [...round, ...extra].map(holeKey)
  if (absence.joinedAt === null && absence.leftAt === null) return new Set(keys)
  const [joined, left] = [absence.joinedAt, absence.leftAt].map(key => (key === null ? -1 : keys.indexOf(key)))
  const isAway = (place: number): boolean =>
    place < (joined ?? -1) || (left !== undefined && left !== -1 && place >= left)
  return new Set(keys.filter((_, place) => isAway(place)))
}
