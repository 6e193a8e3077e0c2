import { createHash } from 'node:crypto'
import type { DeviceId, InviteId, LogId } from '#core/values/ids.ts'
import type { Hello } from '#shared/messages/hello.ts'
import { oldestProtocolVersion } from '#shared/protocol.ts'

/** What a phone shows of itself, secrets already hashed: nothing behind this holds one. */
export interface Shown {
  readonly log: LogId
  readonly device: DeviceId
  readonly keyHash: string
  readonly invite: { readonly id: InviteId; readonly hash: string } | null
  readonly isTooOld: boolean
}

/** SHA-256 of the secret's UTF-8 text, in hex. */
export const hashOf = (secret: string): string => createHash('sha256').update(secret, 'utf8').digest('hex')

export const shownOf = ({ protocol, log, device, key, invite }: Hello): Shown => ({
  log,
  device,
  keyHash: hashOf(key),
  invite: invite && { id: invite.id, hash: hashOf(invite.secret) },
  isTooOld: protocol < oldestProtocolVersion,
})
