import { factsReplacing } from '#core/outing/acts.ts'
import type { LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { type HandOver, type HandOverFault, parseHandOver } from '#shared/hand-over.ts'
import { unpackText } from '../device/packing.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { heldOfText } from '../sync/brought.ts'
import { grantOf } from '../sync/feeds.ts'
import { type HeldOp, waitingMark } from '../sync/held-op.ts'
import { holdingOf } from '../sync/holding.ts'
import { codesOfText } from './codes.ts'
import { grantOfInvite, storedOf } from './invite-meeting.ts'
import { inviteToHandOn } from './inviting.ts'
import { currentEngine, engineOf, logStore, showLog } from './open-outing.ts'
import { freshRecord, keyFact } from './starting.ts'

/** The open outing as text for another phone: what this phone holds, with the invite it came by where it may score. */
export function handOverText(): string {
  const holding = currentEngine().holding()
  const { record, ops } = holding
  const handOver: HandOver = {
    sixThrees: 'hand-over',
    version: 1,
    log: record.log,
    invite: inviteToHandOn(holding),
    ops: [...ops.values()].filter(isWorthHanding).map(({ text }) => text),
  }
  return JSON.stringify(handOver)
}

/** What a phone had not sent when it was taken out is nothing's fault: another may bring it. */
const isWorthHanding = ({ mark }: HeldOp): boolean => mark.kind !== 'refused' || mark.code === 'voided'

/** The same as codes, to be read in any order. */
export const handOverCodes = (): Promise<readonly string[]> => codesOfText(handOverText())

/** What codes carried, as text again; null when it is none. */
export const textOfCodes = (data: string): Promise<string | null> => unpackText(data)

/**
 * Takes an outing in from another phone. What this phone lacks is put in and goes up when a server is met; a phone that
 * is not in yet makes its own key by the invite that came along.
 */
export async function takeOver(text: string, label: string): Promise<Result<LogId, HandOverFault>> {
  const parsed = parseHandOver(text)
  if (!parsed.ok) return err(parsed.error)
  const { log, invite, ops } = parsed.value
  const stored = await storedOf(log)
  if (stored !== null) {
    if (!engineOf(log)) showLog(stored, true)
    await currentEngine().bring(ops)
  } else {
    const held = ops.flatMap((each, place) => heldOfText(log, each, place + 1, waitingMark) ?? [])
    if (held.length === 0) return err('not a hand-over')
    const record = { ...freshRecord(log, label), invite, nextPlace: held.length + 1 }
    await logStore.save(record, held).catch(() => undefined)
    showLog({ record, ops: held }, false)
  }
  await enterBy(parsed.value, label)
  return ok(log)
}

/** Makes this phone's own key, unless it has one or the invite gives none. */
async function enterBy({ invite }: HandOver, label: string): Promise<void> {
  const engine = currentEngine()
  const { record, ops, state } = engine.holding()
  if (invite === null || grantOf(state, record.device) !== null) return
  const grant = grantOfInvite(holdingOf({ record, ops: [...ops.values()] }), invite.id)
  if (grant === null) return
  await engine.note({ invite, label })
  const fact = keyFact({ ...record, label }, { role: grant.role, group: grant.group, invite: invite.id })
  await engine.write(current => ({
    scope: null,
    act: 'phone joined',
    facts: factsReplacing(current.state, [fact]),
  }))
  void askToKeepStorage()
}
