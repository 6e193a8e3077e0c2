import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import { holesAbsent } from '#core/outing/holes-absent.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'
import { holesOf, isSettled, isWritten } from './hole-view.ts'

/** True while a ball's score of a hole is still to come: not settled, and neither hole nor ball is out of it. */
export function isAwaited(outing: Outing, ball: BallId, key: HoleKey): boolean {
  if (isSettled(outing, ball, key) || outing.notes.holesOut.has(key)) return false
  const found = outing.balls.get(ball)
  return found === undefined || !holesAbsent(outing, found).has(key)
}

/** The hole to open on: the first with a score to come for one of the group's balls, else the last. */
export function holeInPlay(outing: Outing, group: Group): PlayedHole | null {
  return firstAwaited(outing, group, group.balls) ?? holesOf(group).at(-1) ?? null
}

/** True once no score of the group is to come. */
export const isAllIn = (outing: Outing, group: Group): boolean => firstAwaited(outing, group, group.balls) === null

/** True where these balls' next score to come is the one of the hole right after this. */
export function isBehind(outing: Outing, group: Group, balls: readonly BallId[], at: PlayedHole): boolean {
  const keys = holesOf(group).map(holeKey)
  const next = firstAwaited(outing, group, balls)
  return next !== null && keys.indexOf(holeKey(next)) === keys.indexOf(holeKey(at)) + 1
}

const firstAwaited = (outing: Outing, group: Group, balls: readonly BallId[]): PlayedHole | null =>
  holesOf(group).find(at => balls.some(ball => isAwaited(outing, ball, holeKey(at)))) ?? null

/**
 * Whether a ball's score for a hole is one that may come now, as the group's scores tell it: from the first hole with a
 * score to come to the hole after the last one written, or the ball's own next hole. A group may be holes behind.
 */
export function isCurrentFor(outing: Outing, group: Group, ball: BallId, at: PlayedHole): boolean {
  const keys = holesOf(group).map(holeKey)
  const [asked, own] = [holeKey(at), firstAwaited(outing, group, [ball])]
  if (own !== null && holeKey(own) === asked) return true
  const open = firstAwaited(outing, group, group.balls)
  if (open === null) return false
  const last = keys.findLastIndex(key => group.balls.some(each => isWritten(outing, each, key)))
  const place = keys.indexOf(asked)
  return place >= keys.indexOf(holeKey(open)) && place <= last + 1
}
