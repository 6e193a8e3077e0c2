import { type InviteId, isId, type LogId } from '#core/values/ids.ts'
import { secretText } from '#shared/atoms.ts'
import type { InviteSecret } from '../sync/log-store.ts'

export interface JoinLink {
  readonly log: LogId
  readonly invite: InviteSecret
}

/** The secret stands in the fragment, which no browser sends to a server. `page` is the app's address without one. */
export const formatJoinLink = (page: string, { log, invite }: JoinLink): string =>
  `${page}#/join/${log}/${invite.id}/${invite.secret}`

/** Reads a link or its fragment; null when it is no invite. */
export function parseJoinLink(text: string): JoinLink | null {
  const [, fragment] = /^(?:https?:\/\/[^\s#]+)?#?(\/join\/\S+)$/.exec(text.trim()) ?? []
  const [, , log, id, secret, ...more] = fragment?.split('/') ?? []
  if (log === undefined || id === undefined || more.length > 0) return null
  if (!isId(log) || !isId(id) || !secretText.safeParse(secret).success) return null
  return { log: log as LogId, invite: { id: id as InviteId, secret: secret as string } }
}
