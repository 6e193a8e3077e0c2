import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import type { FactValues, Grant } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { InviteId, LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { createId } from '../device/random-ids.ts'
import { askToKeepStorage } from '../device/storage-persistence.ts'
import type { InviteSecret, LogRecord } from '../sync/log-store.ts'
import { inventions, showLog } from './open-outing.ts'

export const createInvite = (): InviteSecret => ({ id: createId() as InviteId, secret: inventions.secret() })

/** A log as this phone has it before anything is in it. */
export const freshRecord = (log: LogId, label: string): LogRecord => ({
  log,
  device: inventions.device(),
  nextN: 1,
  nextPlace: 1,
  key: inventions.secret(),
  label,
  invite: null,
  invites: [],
  era: null,
  feeds: [],
  title: null,
  day: null,
  courseName: null,
  at: Date.now(),
})

export const inviteFact = ({ id, secret }: InviteSecret, grant: Omit<Grant, 'hash'>): NewFact => ({
  key: makeKey('invite', { invite: id }),
  value: { ...grant, hash: inventions.hash(secret) },
})

/** This phone's own key, as the invite grants it. */
export const keyFact = (record: LogRecord, grant: Omit<FactValues['key'], 'hash' | 'label'>): NewFact => {
  const value: FactValues['key'] = { ...grant, label: record.label, hash: inventions.hash(record.key) }
  return { key: makeKey('key', { device: record.device }), value: value as unknown as Json }
}

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
