import type { NewFact } from '#core/outing/acts.ts'
import type { FactValues, Grant } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { Inventions } from './inventions.ts'
import type { InviteSecret, LogRecord } from './log-store.ts'

/** A log as a phone has it before anything is in it; `at` in milliseconds since 1970. */
export const freshLog = ({ device, secret }: Inventions, log: LogId, label: string, at: number): LogRecord => ({
  log,
  device: device(),
  nextN: 1,
  nextPlace: 1,
  key: secret(),
  label,
  invite: null,
  invites: [],
  era: null,
  feeds: [],
  title: null,
  day: null,
  courseName: null,
  at,
})

/** What stands of an invite in the log: its hash and what it grants. */
export const factOfInvite = (
  { hash }: Inventions,
  { id, secret }: InviteSecret,
  grant: Omit<Grant, 'hash'>,
): NewFact => ({ key: makeKey('invite', { invite: id }), value: { ...grant, hash: hash(secret) } })

/** A phone's own key, as its invite grants it. */
export function factOfKey(
  { hash }: Inventions,
  { device, key, label }: LogRecord,
  grant: Omit<FactValues['key'], 'hash' | 'label'>,
): NewFact {
  const value: FactValues['key'] = { ...grant, label, hash: hash(key) }
  return { key: makeKey('key', { device }), value: value as unknown as Json }
}
