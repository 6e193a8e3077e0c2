import { standingsOf } from '#core/log/fold.ts'
import type { Grant } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import { unreachable } from '#core/values/assert.ts'
import type { InviteId, LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { factSchemas } from '#shared/facts.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import { protocolVersion } from '#shared/protocol.ts'
import { type Holding, holdingAfter, holdingOf, withFeedSeq } from '../sync/holding.ts'
import type { LogRecord, StoredLog } from '../sync/log-store.ts'
import { type Meeting, meet } from '../sync/meet.ts'
import { askByHttp } from '../sync/polling-link.ts'
import { receivedChange } from '../sync/received.ts'
import { engineOf, logStore, pageFetch } from './open-outing.ts'

export const joinFaults = [
  'not an invite',
  'no server',
  'log unknown',
  'invite unknown',
  'void',
  'deleted',
  'too old',
] as const
export type JoinFault = (typeof joinFaults)[number]

const joinLimitMs = 15_000

/** What the open page holds is newer than the disk may be. */
export async function storedOf(log: LogId): Promise<StoredLog | null> {
  const holding = engineOf(log)?.holding()
  if (holding) return { record: holding.record, ops: [...holding.ops.values()] }
  return logStore.load(log).catch(() => null)
}

/** What an invite leads to: everything so far and what it grants. Nothing is written, here or there. */
export async function followInvite(
  record: LogRecord,
  invite: InviteId,
  ops: StoredLog['ops'],
): Promise<Result<{ readonly holding: Holding; readonly grant: Grant }, JoinFault>> {
  const met = await meetServer(record)
  if (!met.ok) return err(faultOf(met.error))
  const holding = holdingMet({ record, ops }, met.value)
  const grant = grantOfInvite(holding, invite)
  return grant ? ok({ holding, grant }) : err('invite unknown')
}

function meetServer({ log, device, key, invite }: LogRecord): ReturnType<typeof meet> {
  const caller = {
    fetch: pageFetch,
    url: location.origin,
    hello: { protocol: protocolVersion, log, device, key, invite },
  }
  return meet((question, message) => askByHttp(caller, question, message, joinLimitMs))
}

function holdingMet(stored: StoredLog, { era, upTo, ops }: Meeting): Holding {
  const holding = holdingOf(stored)
  const change = receivedChange(holding, ops, Date.now())
  // A phone that brings ops of its own still has to compare them with the server's.
  const isNew = stored.ops.length === 0
  const record = (current: LogRecord): LogRecord => {
    const received = { ...(change.record?.(current) ?? current), era: isNew ? era : null, feeds: [] }
    return isNew ? withFeedSeq(received, 'all', upTo) : received
  }
  return holdingAfter(holding, { ...change, record })
}

function faultOf(why: Stranger | 'no server'): JoinFault {
  switch (why) {
    case 'key unknown':
      return 'invite unknown'
    case 'voided':
      return 'void'
    case 'protocol too old':
      return 'too old'
    case 'busy':
      return 'no server'
    case 'no server':
    case 'log unknown':
    case 'deleted':
      return why
    default:
      return unreachable(why)
  }
}

export function grantOfInvite({ state }: Holding, invite: InviteId): Grant | null {
  const parsed = factSchemas.invite.safeParse(standingsOf(state, makeKey('invite', { invite })).at(-1)?.value)
  return parsed.success ? (parsed.data as Grant) : null
}
