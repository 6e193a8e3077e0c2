import type { PlayedHole } from '#core/card/score.ts'
import { type LogState, standingsOf } from '#core/log/fold.ts'
import type { Place, ScoreRecord } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { factSchemas } from '#shared/facts.ts'
import { type Me, outingStore } from './outing-store.ts'

export interface ScoreAt extends PlayedHole {
  readonly ball: BallId
  /** True where this phone keeps the marker's record of the ball. */
  readonly isMarked?: boolean
}

/** Which record this phone writes a ball's score into. */
export function recordFor(
  outing: Outing,
  me: Me | null,
  at: ScoreAt,
): { readonly group: GroupId; readonly record: ScoreRecord } {
  const group = groupPlaying(outingStore.getState().state, at) ?? outing.balls.get(at.ball)?.group ?? null
  if (group === null) throw new Error(`ball ${at.ball} is in no group`)
  if (at.isMarked) return { group, record: 'marker' }
  const isDeskOfSeveral = me?.role === 'desk' && outing.groups.size > 1
  return { group, record: isDeskOfSeveral ? 'desk' : 'card' }
}

/** The group in which a moved ball plays this hole; null where its place says nothing else. */
function groupPlaying(state: LogState, { ball, hole, lap }: ScoreAt): GroupId | null {
  const parsed = factSchemas.place.safeParse(standingsOf(state, makeKey('place', { ball })).at(-1)?.value)
  if (!parsed.success) return null
  const { group, elsewhere } = parsed.data as Place
  const other = elsewhere.find(({ holes }) => holes.some(([h, l]) => h === hole && l === lap))
  return other?.group ?? group
}
