import { factsReplacing } from '#core/outing/acts.ts'
import type { Grant } from '#core/outing/facts.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { isKnownValue } from '#shared/facts.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { grantOf } from '../sync/feeds.ts'
import { waitingMark } from '../sync/held-op.ts'
import { type Holding, holdingOf } from '../sync/holding.ts'
import type { StoredLog } from '../sync/log-store.ts'
import { isVoid, isVoidThere } from './being-out.ts'
import { followInvite, type JoinFault, storedOf } from './invite-meeting.ts'
import { parseJoinLink } from './join-link.ts'
import { engineOf, showLog } from './open-outing.ts'
import { freshRecord, keyFact } from './starting.ts'

/** What a phone sees of an outing before it joins. */
export interface InviteSight {
  readonly log: LogId
  /** This phone is in already. */
  readonly isIn: boolean
  readonly title: string | null
  readonly courseName: string | null
  readonly day: string | null
  /** The names of its players. */
  readonly players: readonly string[]
}

/** Looks at where an invite leads; nothing is registered and nothing kept. */
export async function lookAtInvite(link: string): Promise<Result<InviteSight, JoinFault>> {
  const parsed = parseJoinLink(link)
  if (!parsed) return err('not an invite')
  const { log, invite } = parsed
  const stored = await storedOf(log)
  const isIn = stored !== null && (await isStillIn(stored))
  if (isIn) return ok(sightOf(log, isIn, holdingOf(stored)))
  const followed = await followInvite({ ...freshRecord(log, ''), invite }, invite.id, [])
  return followed.ok ? ok(sightOf(log, isIn, followed.value.holding)) : followed
}

function sightOf(log: LogId, isIn: boolean, { state }: Holding): InviteSight {
  const { title, courseName, day, players } = outingOf(state, isKnownValue)
  return { log, isIn, title, courseName, day, players: [...players.values()].map(({ name }) => name) }
}

/** This phone has a key there, and nobody has taken it out; with no server what it holds counts. */
async function isStillIn(stored: StoredLog): Promise<boolean> {
  const { state } = holdingOf(stored)
  const { device, log } = stored.record
  if (grantOf(state, device) === null || isVoid(state, device)) return false
  return engineOf(log)?.foot().link === 'live' || !(await isVoidThere(stored.record))
}

/**
 * A phone that was taken out, or has no key yet, comes in under a new name; what it had not sent goes up under the
 * rights that it gets.
 */
function anew({ record, ops }: StoredLog): StoredLog {
  const { device, key } = freshRecord(record.log, record.label)
  const hadKey = grantOf(holdingOf({ record, ops }).state, record.device) !== null
  return {
    record: hadKey ? { ...record, device, key, nextN: 1, era: null, feeds: [] } : record,
    ops: ops.map(held =>
      held.mark.kind === 'refused' && held.mark.code === 'voided' ? { ...held, mark: waitingMark } : held,
    ),
  }
}

/** Follows an invite: takes in the outing, makes this phone's own key and shows it. A phone that is in it already just opens it. */
export async function joinOuting(link: string, label: string): Promise<Result<LogId, JoinFault>> {
  const parsed = parseJoinLink(link)
  if (!parsed) return err('not an invite')
  const { log, invite } = parsed
  const stored = await storedOf(log)
  if (stored && (await isStillIn(stored))) {
    if (!engineOf(log)) showLog(stored, true)
    return ok(log)
  }
  const { record, ops } = stored ? anew(stored) : { record: freshRecord(log, label), ops: [] }
  const followed = await followInvite({ ...record, label, invite }, invite.id, ops)
  if (!followed.ok) return followed
  await writeKey(followed.value.holding, followed.value.grant)
  void askToKeepStorage()
  return ok(log)
}

async function writeKey({ record, ops }: Holding, { role, group }: Grant): Promise<void> {
  const engine = showLog({ record, ops: [...ops.values()] }, false)
  const fact = keyFact(record, { role, group, invite: record.invite?.id ?? null })
  await engine.write(({ state }) => ({ scope: null, act: 'phone joined', facts: factsReplacing(state, [fact]) }))
}
