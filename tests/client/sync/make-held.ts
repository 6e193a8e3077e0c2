import { type HeldOp, waitingMark } from '#client/sync/held-op.ts'
import type { LogRecord } from '#client/sync/log-store.ts'
import { type Op, textOfOp } from '#core/log/op.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'

export const quillmoor = 'quillmoor' as LogId
export const alder = 'alder' as DeviceId

export const makeOp = (parts: Partial<Op> = {}): Op => ({
  log: quillmoor,
  scope: null,
  device: alder,
  n: 1,
  tick: 1,
  at: 1_000,
  act: 'title set',
  facts: [{ key: 'title', value: 'Saturday', replaces: [] }],
  ...parts,
})

export const makeHeld = (parts: Partial<Op> = {}, held: Partial<HeldOp> = {}): HeldOp => {
  const op = makeOp(parts)
  return { op, text: textOfOp(op), seq: null, serverAt: null, carrier: null, mark: waitingMark, place: op.n, ...held }
}

export const makeRecord = (parts: Partial<LogRecord> = {}): LogRecord => ({
  log: quillmoor,
  device: alder,
  nextN: 1,
  nextPlace: 1,
  key: 'A'.repeat(22),
  label: 'Alder',
  invite: null,
  invites: [],
  era: null,
  feeds: [],
  title: null,
  day: null,
  courseName: null,
  at: 0,
  ...parts,
})
