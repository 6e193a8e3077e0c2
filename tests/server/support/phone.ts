import type { Fact, Op } from '#core/log/op.ts'
import { textOfOp } from '#core/log/op.ts'
import type { Role } from '#core/outing/facts.ts'
import type { DeviceId, GroupId, InviteId, LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { hashOf, type Shown, shownOf } from '#server/access/shown.ts'
import type { Hello } from '#shared/messages/hello.ts'
import { protocolVersion } from '#shared/protocol.ts'

export interface Invite {
  readonly id: InviteId
  readonly secret: string
  readonly role: Role
  readonly group: GroupId | null
}

export const makeInvite = (id: string, role: Role, group: string | null = null): Invite => ({
  id: id as InviteId,
  secret: `invite-secret-of-${id}`.padEnd(24, '-'),
  role,
  group: group as GroupId | null,
})

export const inviteFact = ({ id, secret, role, group }: Invite): Fact => ({
  key: `invite/${id}`,
  value: { hash: hashOf(secret), role, group, label: 'Quillmoor' },
  replaces: [],
})

export const fact = (key: string, value: Json, replaces: readonly string[] = []): Fact => ({
  key,
  value,
  replaces: replaces as Fact['replaces'],
})

export const score = (
  group: string,
  strokes: number,
  hole = 1,
  ball = 'alder',
  replaces: readonly string[] = [],
): Fact => fact(`g/${group}/score/${ball}/${hole}/1/card`, strokes, replaces)

/** A phone that makes sound ops: what it says of itself, and its next op's text. */
export interface Phone {
  readonly device: DeviceId
  readonly secret: string
  readonly hello: Hello
  readonly shown: Shown
  keyFact(role: Role, group?: string | null, changes?: Readonly<Record<string, Json>>): Fact
  op(facts: readonly Fact[], changes?: Partial<Op>): string
}

export function makePhone(device: string, invite: Invite | null = null, log = 'quillmoor'): Phone {
  const secret = `key-secret-of-${device}`.padEnd(24, '-')
  const hello: Hello = {
    protocol: protocolVersion,
    log: log as LogId,
    device: device as DeviceId,
    key: secret,
    invite: invite && { id: invite.id, secret: invite.secret },
  }
  let n = 0
  return {
    device: hello.device,
    secret,
    hello,
    shown: shownOf(hello),
    keyFact: (role, group = null, changes = {}) =>
      fact(`key/${device}`, {
        hash: hashOf(secret),
        role,
        group,
        label: `phone ${device}`,
        invite: invite?.id ?? null,
        ...changes,
      }),
    op(facts, changes = {}) {
      n++
      const scope = null
      return textOfOp({
        log: hello.log,
        scope,
        device: hello.device,
        n,
        tick: n,
        at: 1_000,
        act: 'act',
        facts,
        ...changes,
      })
    },
  }
}
