import type { InviteId } from '#core/values/ids.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import type { Actor } from '#shared/roles.ts'
import type { Access, Granted, LogHead } from '../store/store.ts'
import type { Shown } from './shown.ts'

/** Who a phone is to a log: known by its own key, let in by its invite until it has given its key, or neither. */
export type Weight =
  | { readonly kind: 'member'; readonly actor: Actor }
  | { readonly kind: 'guest'; readonly actor: Actor; readonly invite: InviteId }
  | { readonly kind: 'stranger'; readonly why: Stranger }

/** By key and invite alone, never by what the log's facts fold to. */
export function weigh(shown: Shown, head: LogHead | 'deleted' | null, access: Access): Weight {
  if (shown.isTooOld) return { kind: 'stranger', why: 'protocol too old' }
  if (head === 'deleted') return { kind: 'stranger', why: 'deleted' }
  if (head === null) return { kind: 'stranger', why: 'log unknown' }
  if (access.key?.hash === shown.keyHash) {
    return access.keyVoid ? { kind: 'stranger', why: 'voided' } : { kind: 'member', actor: actorOf(access.key, shown) }
  }
  return weighInvite(shown, access)
}

function weighInvite(shown: Shown, { invite, inviteVoid, keyVoid }: Access): Weight {
  if (shown.invite === null || invite?.hash !== shown.invite.hash) return { kind: 'stranger', why: 'key unknown' }
  if (inviteVoid || keyVoid) return { kind: 'stranger', why: 'voided' }
  return { kind: 'guest', actor: actorOf(invite, shown), invite: shown.invite.id }
}

const actorOf = ({ role, group }: Granted, { device }: Shown): Actor => ({ role, group, device })
