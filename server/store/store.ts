import type { Here } from '#core/log/ranges.ts'
import type { Role } from '#core/outing/facts.ts'
import type { DeviceId, GroupId, InviteId, LogId } from '#core/values/ids.ts'
import type { Feed, StoredOp } from '#shared/messages/feed.ts'
import type { Refusal, Verdict } from '#shared/messages/verdict.ts'

/** What a server holds of a log, before any op is read. */
export interface LogHead {
  /** Random when this store first holds the log and at every restore. */
  readonly era: string
  /** The last op's sequence; the first op has 1. */
  readonly seq: number
}

/** A key or an invite as the access table holds it. */
export interface Granted {
  readonly hash: string
  readonly role: Role
  readonly group: GroupId | null
}

/** What the access table says of a phone and of the invite that it shows. */
export interface Access {
  readonly key: Granted | null
  readonly keyVoid: boolean
  readonly invite: Granted | null
  readonly inviteVoid: boolean
}

/** A row that an op writes into the access table, in the same transaction. The first writer of a name keeps its hash. */
export interface Claim extends Granted {
  readonly kind: 'key' | 'invite'
  readonly name: DeviceId | InviteId
  /** The fact's key, by its place in the op: what a refusal names. */
  readonly path: string
}

/** A key or an invite that an op voids, or whose void it withdraws. */
export interface Voiding {
  readonly kind: 'key' | 'invite'
  readonly name: DeviceId | InviteId
  readonly stands: boolean
}

/** An op that has been read and weighed, on its way in. */
export interface Entry {
  readonly log: LogId
  readonly device: DeviceId
  readonly n: number
  readonly scope: GroupId | null
  /** Canonical, and stored as it is. */
  readonly text: string
  /** The server's clock, milliseconds since 1970. */
  readonly at: number
  /** Who brought it, when that is another than its device. */
  readonly carrier: DeviceId | null
  /** Whether it may be the first op of a log that the store does not hold. */
  readonly creates: boolean
  /** The key or invite on whose rights it was weighed; it must still stand when the op is stored. Null: on its own. */
  readonly under: Pick<Voiding, 'kind' | 'name'> | null
  readonly claims: readonly Claim[]
  readonly voidings: readonly Voiding[]
  /** Whether a claim may change the role of a key or invite that is there already. */
  readonly mayRegrant: boolean
}

/** `weigh again`: what the op was weighed against is no longer so (another phone has just made the log). */
export type Outcome = Verdict | { readonly kind: 'weigh again' }

export type StoreRefusal = Extract<Refusal, 'identity taken' | 'key taken' | 'voided' | 'deleted'>

/** An op that waits for the desk. */
export interface Offer {
  readonly device: DeviceId
  readonly n: number
  readonly text: string
  readonly carrier: DeviceId
}

export interface FeedRead {
  readonly feed: Feed
  readonly after: number
  /** Nothing later than this sequence. */
  readonly upTo: number
  readonly limit: number
  /** Of all texts together, in characters; one op always comes. */
  readonly textLength: number
}

/** The last sequence of a log, of its ops of no scope, and of each group's. */
export interface FeedEnds extends LogHead {
  readonly noScope: number
  readonly byGroup: ReadonlyMap<GroupId, number>
}

/** Why a store takes nothing at the moment. */
export type StoreTrouble = 'disk' | 'database'

/**
 * Where logs live. Every store passes tests/server/store/contract.ts.
 * - `append` answers after the op is durable, in the order of the calls; many waiting ops share one transaction.
 *   Trouble of the disk or the database is an answer (`later`), never a throw: nothing was stored.
 * - The same identity with the same text is `already stored`, with other text refused; both change nothing.
 * - Sequences of a log are 1, 2, 3 … with no gap.
 * - An op's text comes back to the last character.
 */
export interface Store {
  headOf(log: LogId): Promise<LogHead | 'deleted' | null>
  append(entry: Entry): Promise<Outcome>
  find(log: LogId, device: DeviceId, n: number): Promise<{ readonly seq: number; readonly text: string } | null>
  /** In order of sequence. */
  read(log: LogId, read: FeedRead): Promise<readonly StoredOp[]>
  endsOf(log: LogId): Promise<FeedEnds | null>
  hereOf(log: LogId, feed: Feed): Promise<Here>
  accessOf(log: LogId, device: DeviceId, invite: InviteId | null): Promise<Access>
  /** False when nothing changed: it is there already, or this carrier has too many. */
  offer(log: LogId, offer: Offer, mostByCarrier: number): Promise<boolean>
  offersOf(log: LogId): Promise<readonly Offer[]>
  dropOffer(log: LogId, device: DeviceId, n: number): Promise<void>
  /** Deletes a log for good and leaves a tombstone. */
  bury(log: LogId, at: number): Promise<void>
  /** Buries logs whose last op was stored before then, milliseconds since 1970, some at a time; gives back which. */
  buryIdle(before: number, at: number): Promise<readonly LogId[]>
  /** Null when the last append went well and the store can be read. */
  trouble(): Promise<StoreTrouble | null>
  /** Stores what waits, and ends. Safe to call twice. */
  close(): Promise<void>
}

/** The scope of a feed's ops besides those of none; null for `all`. */
export const groupOfFeed = (feed: Feed): GroupId | null => (feed === 'all' ? null : (feed.slice(2) as GroupId))
