import type { PlayedHole } from '#core/card/score.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { ownerOf } from './cards-of.ts'
import type { KeyParts } from './facts.ts'
import type { Ball } from './outing.ts'

/** The group that speaks for a ball: on a hole the one that plays it there, of the whole round its own. */
export function groupSpeakingFor(
  balls: ReadonlyMap<BallId, Ball>,
  ball: BallId,
  at: PlayedHole | null,
): GroupId | null {
  const found = balls.get(ball)
  if (found === undefined) return null
  return at === null ? found.group : ownerOf(found)(at)
}

/** Whether the group of a key speaks for a ball there. */
export function isSpeaker(
  balls: ReadonlyMap<BallId, Ball>,
  ball: BallId | null,
  { group, hole, lap }: Pick<KeyParts, 'group' | 'hole' | 'lap'>,
): boolean {
  const at = hole === null || lap === null ? null : { hole, lap }
  return ball !== null && group !== null && groupSpeakingFor(balls, ball, at) === group
}
