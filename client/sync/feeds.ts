import { factsOf, keysOf, type LogState, standingsOf } from '#core/log/fold.ts'
import type { FactValues, Grant, Place } from '#core/outing/facts.ts'
import { makeKey, parseKey } from '#core/outing/keys.ts'
import type { DeviceId, GroupId } from '#core/values/ids.ts'
import { factSchemas } from '#shared/facts.ts'
import { limits } from '#shared/limits.ts'
import type { Feed } from '#shared/messages/feed.ts'

/** What the log grants a phone; null where its key is not in it. */
export function grantOf(state: LogState, device: DeviceId): Grant | null {
  const standing = standingsOf(state, makeKey('key', { device })).at(-1)
  const parsed = factSchemas.key.safeParse(standing?.value)
  return parsed.success ? (parsed.data as FactValues['key']) : null
}

export function groupsOf(state: LogState): readonly GroupId[] {
  return keysOf(state).flatMap(key => {
    const parts = parseKey(key)
    return parts?.kind === 'group' && parts.group ? [parts.group] : []
  })
}

/**
 * What this phone follows: everything as the desk or a viewer of a larger outing, its group's ops as a scorer, with
 * every group in which one of its balls was placed. Where there is one group all follow that one; of a few groups a
 * scorer follows everything too, its own at once and the others in batches, so that its board is that of everybody.
 */
export function feedsOf(state: LogState, device: DeviceId): readonly Feed[] {
  const groups = groupsOf(state)
  const [only] = groups
  if (groups.length === 1 && only) return [feedOfGroup(only)]
  const mine = grantOf(state, device)?.group ?? null
  if (mine === null) return ['all']
  const around = [...new Set([mine, ...groupsAround(state, mine)])].map(feedOfGroup)
  const others: readonly Feed[] = groups.length <= mostInRollUp ? ['all'] : []
  return [...others, ...around].slice(0, limits.feedsInFollow).sort()
}

/** Groups of a roll-up of up to 24, one board for all; in a larger outing a scorer's phone spares what it carries. */
const mostInRollUp = 8

const feedOfGroup = (group: GroupId): Feed => `g/${group}`

/** The groups that a ball of this group was also placed in. */
function groupsAround(state: LogState, mine: GroupId): readonly GroupId[] {
  return factsOf(state).flatMap(([key, standings]) => {
    if (parseKey(key)?.kind !== 'place') return []
    const named = standings.flatMap(({ value }) => {
      const parsed = factSchemas.place.safeParse(value)
      return parsed.success ? groupsOfPlace(parsed.data as Place) : []
    })
    return named.includes(mine) ? named : []
  })
}

const groupsOfPlace = ({ group, elsewhere }: Place): GroupId[] => [group, ...elsewhere.map(part => part.group)]

/** Whether an op is of this feed: a group's feed holds its own ops and those of no scope. */
export const isInFeed = (feed: Feed, scope: GroupId | null): boolean =>
  feed === 'all' || scope === null || feed === feedOfGroup(scope)
