import { standingsOf } from '#core/log/fold.ts'
import { factsReplacing } from '#core/outing/acts.ts'
import type { Grant, Role } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import { unreachable } from '#core/values/assert.ts'
import type { GroupId, InviteId, LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { factSchemas } from '#shared/facts.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import { protocolVersion } from '#shared/protocol.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { grantOf, groupsOf } from '../sync/feeds.ts'
import { type Holding, holdingAfter, holdingOf, withFeedSeq } from '../sync/holding.ts'
import type { InviteSecret, LogRecord, StoredLog } from '../sync/log-store.ts'
import { type Meeting, meet } from '../sync/meet.ts'
import { askByHttp } from '../sync/polling-link.ts'
import { receivedChange } from '../sync/received.ts'
import { formatJoinLink, parseJoinLink } from './join-link.ts'
import { currentEngine, engineOf, logStore, pageFetch, showLog } from './open-outing.ts'
import { pageAddress } from './page-address.ts'
import { createInvite, freshRecord, inviteFact, keyFact } from './starting.ts'

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

/** Follows an invite: takes in the outing, makes this phone's own key and shows it. A phone that is in it already just opens it. */
export async function joinOuting(link: string, label: string): Promise<Result<LogId, JoinFault>> {
  const parsed = parseJoinLink(link)
  if (!parsed) return err('not an invite')
  const { log, invite } = parsed
  const stored = await storedOf(log)
  if (stored && grantOf(holdingOf(stored).state, stored.record.device)) {
    if (!engineOf(log)) showLog(stored, true)
    return ok(log)
  }
  const record: LogRecord = { ...(stored?.record ?? freshRecord(log, label)), label, invite }
  const met = await meetServer(record)
  if (!met.ok) return err(faultOf(met.error))
  const holding = holdingMet({ record, ops: stored?.ops ?? [] }, met.value)
  const grant = grantOfInvite(holding, invite.id)
  if (!grant) return err('invite unknown')
  await writeKey(holding, grant)
  void askToKeepStorage()
  return ok(log)
}

/** What the open page holds is newer than the disk may be. */
async function storedOf(log: LogId): Promise<StoredLog | null> {
  const holding = engineOf(log)?.holding()
  if (holding) return { record: holding.record, ops: [...holding.ops.values()] }
  return logStore.load(log).catch(() => null)
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

async function writeKey({ record, ops }: Holding, { role, group }: Grant): Promise<void> {
  const engine = showLog({ record, ops: [...ops.values()] }, false)
  const fact = keyFact(record, { role, group, invite: record.invite?.id ?? null })
  await engine.write(({ state }) => ({ scope: null, act: 'phone joined', facts: factsReplacing(state, [fact]) }))
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

function grantOfInvite({ state }: Holding, invite: InviteId): Grant | null {
  const parsed = factSchemas.invite.safeParse(standingsOf(state, makeKey('invite', { invite })).at(-1)?.value)
  return parsed.success ? (parsed.data as Grant) : null
}

/** A link that lets a phone in; the one made before where there is one. In an outing of one group a scorer is a desk. */
export async function inviteLink(role: 'desk' | 'scorer' | 'viewer', group: GroupId | null): Promise<string> {
  const engine = currentEngine()
  const holding = engine.holding()
  const wanted = grantWanted(holding, role, group)
  const page = await pageAddress(pageFetch, location)
  const { log } = holding.record
  const known = knownInvites(holding).find(invite => isGrant(holding, invite, wanted))
  if (known) return formatJoinLink(page, { log, invite: known })
  const invite = createInvite()
  // The secret first: an invite without one is of no use to anybody.
  await engine.note({ invites: [...holding.record.invites, invite] })
  const fact = inviteFact(invite, { ...wanted, label: labelOf(holding, wanted) })
  await engine.write(({ state }) => ({ scope: null, act: 'invite made', facts: factsReplacing(state, [fact]) }))
  return formatJoinLink(page, { log, invite })
}

interface Wanted {
  readonly role: Role
  readonly group: GroupId | null
}

function grantWanted({ state }: Holding, role: 'desk' | 'scorer' | 'viewer', group: GroupId | null): Wanted {
  if (role === 'scorer' && groupsOf(state).length > 1) return { role, group }
  return { role: role === 'scorer' ? 'desk' : role, group: null }
}

const knownInvites = ({ record }: Holding): readonly InviteSecret[] =>
  record.invite ? [record.invite, ...record.invites] : record.invites

function isGrant(holding: Holding, { id }: InviteSecret, { role, group }: Wanted): boolean {
  const grant = grantOfInvite(holding, id)
  const isVoid = standingsOf(holding.state, makeKey('voidInvite', { invite: id })).length > 0
  return !isVoid && grant?.role === role && grant.group === group
}

function labelOf({ state }: Holding, { role, group }: Wanted): string {
  if (role === 'viewer') return 'Viewers'
  if (group === null) return 'Desk'
  const parsed = factSchemas.group.safeParse(standingsOf(state, makeKey('group', { group })).at(-1)?.value)
  return parsed.success ? parsed.data.name : 'Group'
}
