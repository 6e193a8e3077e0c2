import type { DeviceId, InviteId, LogId, OpId } from '#core/values/ids.ts'
import type { Feed } from '#shared/messages/feed.ts'
import type { HeldOp } from './held-op.ts'

export interface InviteSecret {
  readonly id: InviteId
  readonly secret: string
}

/** What this phone knows of a log beside its ops. */
export interface LogRecord {
  readonly log: LogId
  /** This phone's name in this log. */
  readonly device: DeviceId
  /** The names that it had before; missing where it had none. */
  readonly formerly?: readonly DeviceId[]
  /** The n that the next op takes. */
  readonly nextN: number
  /** The place that the next held op takes. */
  readonly nextPlace: number
  /** The secret of this phone's own key; it stays on the phone. */
  readonly key: string
  readonly label: string
  /** The invite that this phone shows to servers; null when it has none. */
  readonly invite: InviteSecret | null
  /** The invites that this phone made, to show their links again. */
  readonly invites: readonly InviteSecret[]
  /** Null while the log has met no server. */
  readonly era: string | null
  /** Up to which sequence of the log each feed is complete here. */
  readonly feeds: readonly (readonly [Feed, number])[]
  readonly title: string | null
  readonly day: string | null
  readonly courseName: string | null
  /** When something last came into it, milliseconds since 1970. */
  readonly at: number
}

export interface StoredLog {
  readonly record: LogRecord
  /** In order of place. */
  readonly ops: readonly HeldOp[]
}

/** What the next op of this phone is called. */
export type Draw = Pick<LogRecord, 'device' | 'nextN' | 'nextPlace'>

export interface Change {
  readonly put?: readonly HeldOp[]
  readonly remove?: readonly OpId[]
  readonly record?: (record: LogRecord) => LogRecord
}

/**
 * The phone's memory. Every method is one transaction, done when it is on the disk; it rejects when the disk fails.
 * No op ever comes from a half-done one.
 */
export interface LogStore {
  list(): Promise<readonly { readonly record: LogRecord; readonly waiting: number }[]>
  /** Null when this phone does not hold the log. */
  load(log: LogId): Promise<StoredLog | null>
  /** A new log, or all of one again after a failure; numbers already drawn stay drawn. */
  save(record: LogRecord, ops: readonly HeldOp[]): Promise<void>
  /** Stores the op made for the name drawn in this same transaction. `make` may be called again after a lost connection. */
  append(log: LogId, make: (draw: Draw) => HeldOp): Promise<HeldOp>
  change(log: LogId, change: Change): Promise<void>
  remove(log: LogId): Promise<void>
}

/** Whether an op of this name was said by this phone. */
export const isOwnName = ({ device, formerly = [] }: LogRecord, name: DeviceId): boolean =>
  name === device || formerly.includes(name)

/** The record after this op was made for the name drawn from it. */
export const afterDraw = (record: LogRecord, { op, place }: HeldOp): LogRecord => ({
  ...record,
  nextN: op.device === record.device ? Math.max(record.nextN, op.n + 1) : record.nextN,
  nextPlace: Math.max(record.nextPlace, place + 1),
  at: Math.max(record.at, op.at),
})

/** Of two records of one log the newer, with the larger of the numbers drawn. */
export const joinRecords = (newer: LogRecord, older: LogRecord | undefined): LogRecord => ({
  ...newer,
  nextN: older?.device === newer.device ? Math.max(newer.nextN, older.nextN) : newer.nextN,
  nextPlace: Math.max(newer.nextPlace, older?.nextPlace ?? 1),
})
