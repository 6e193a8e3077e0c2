import type { ScoreRecord } from '#core/card/card.ts'
import type { PlayedHole } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import { groupSpeakingFor } from '#core/outing/speaker.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import type { Me } from './outing-store.ts'
import { groupOfPlayer } from './own-group.ts'

export interface ScoreAt extends PlayedHole {
  readonly ball: BallId
  /** True where this phone keeps the marker's record of the ball. */
  readonly isMarked?: boolean
}

/** Which record this phone writes a ball's score into; a desk that plays in the group keeps that group's card. */
export function recordFor(
  outing: Outing,
  me: Me | null,
  at: ScoreAt,
): { readonly group: GroupId; readonly record: ScoreRecord } {
  const group = groupSpeakingFor(outing.balls, at.ball, at)
  if (group === null) throw new Error(`ball ${at.ball} is in no group`)
  if (at.isMarked) return { group, record: 'marker' }
  const isDeskOfSeveral = me?.role === 'desk' && outing.groups.size > 1 && groupOfPlayer(outing, me) !== group
  return { group, record: isDeskOfSeveral ? 'desk' : 'card' }
}
