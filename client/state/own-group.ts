import type { Group, Outing } from '#core/outing/outing.ts'
import type { GroupId, LogId } from '#core/values/ids.ts'
import { remember, remembered } from '../device/remembered.ts'
import type { Me, OutingStore } from './outing-store.ts'

/** The groups that anybody plays in: one that everybody has left keeps its scores and is shown no more. */
export const groupsPlaying = ({ groups }: Pick<Outing, 'groups'>): readonly Group[] =>
  [...groups.values()].filter(({ balls }) => balls.length > 0)

/**
 * The group that this phone goes round with: a scorer's own; of the desk's phone the one chosen on it, else the one in which
 * the player plays whose name it gave. Null where neither is known.
 */
export function ownGroupOf({ log, outing, me }: Pick<OutingStore, 'log' | 'outing' | 'me'>): GroupId | null {
  if (!outing || !me) return null
  if (me.group !== null) return me.group
  const chosen = log === null ? null : remembered(`group-${log}`)
  return groupsPlaying(outing).find(({ id }) => id === chosen)?.id ?? groupOfPlayer(outing, me)
}

/** The group in which the player plays whose name this phone gave. */
export function groupOfPlayer({ players, balls }: Outing, { label }: Me): GroupId | null {
  const found = [...balls.values()].filter(ball => ball.players.some(id => players.get(id)?.name === label))
  return found.length === 1 ? (found[0]?.group ?? null) : null
}

export const rememberGroup = (log: LogId, group: GroupId): void => remember(`group-${log}`, group)
