import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import type { FactValues, Grant } from '#core/outing/facts.ts'
import type { InviteId, LogId } from '#core/values/ids.ts'
import { createId } from '../device/random-ids.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import { factOfInvite, factOfKey, freshLog } from '../sync/fresh-log.ts'
import type { InviteSecret, LogRecord } from '../sync/log-store.ts'
import { inventions } from './inventions.ts'
import { showLog } from './open-outing.ts'

export const createInvite = (): InviteSecret => ({ id: createId() as InviteId, secret: inventions.secret() })

export const freshRecord = (log: LogId, label: string): LogRecord => freshLog(inventions, log, label, Date.now())

export const inviteFact = (invite: InviteSecret, grant: Omit<Grant, 'hash'>): NewFact =>
  factOfInvite(inventions, invite, grant)

export const keyFact = (record: LogRecord, grant: Omit<FactValues['key'], 'hash' | 'label'>): NewFact =>
  factOfKey(inventions, record, grant)

/** Makes the log, this phone's key and an invite for desks and one for viewers, in one op with these facts. Needs no signal. */
export async function startOuting(facts: readonly NewFact[], label: string): Promise<LogId> {
  const [desk, viewer] = [createInvite(), createInvite()]
  const log = createId(20) as LogId
  const record: LogRecord = { ...freshRecord(log, label), invite: desk, invites: [desk, viewer] }
  const founding = [
    ...facts,
    keyFact(record, { role: 'desk', group: null, invite: null }),
    inviteFact(desk, { role: 'desk', group: null, label: 'Desk' }),
    inviteFact(viewer, { role: 'viewer', group: null, label: 'Viewers' }),
  ]
  const engine = showLog({ record, ops: [] }, false)
  await engine.write(({ state }) => ({ scope: null, act: 'outing started', facts: factsReplacing(state, founding) }))
  void askToKeepStorage()
  return log
}
