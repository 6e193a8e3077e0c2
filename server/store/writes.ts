import type { DeviceId, LogId } from '#core/values/ids.ts'
import type { Database } from './driver.ts'
import type { Claim, Entry, Offer, Outcome } from './store.ts'

/** Logs deleted in one transaction; the next round takes the rest. */
const mostIdle = 50

interface GrantRow {
  readonly hash: string
  readonly role: string
  readonly grp: string | null
}

/** A log during one transaction: what is asked once, however many ops it gets. */
interface OpenLog {
  seq: number
  readonly seqBefore: number
  hasVoids: boolean
  readonly hasOffers: boolean
}

export interface Writes {
  /** All of one transaction, in order. */
  appendAll(entries: readonly Entry[]): readonly Outcome[]
  offer(log: LogId, offer: Offer, mostByCarrier: number): boolean
  dropOffer(log: LogId, device: DeviceId, n: number): void
  bury(log: LogId, at: number): void
  idleSince(before: number): readonly LogId[]
}

/** What changes the database; the caller opens and ends the transaction. */
export function createWrites(database: Database, newEra: () => string): Writes {
  const statements = prepareWrites(database)

  return {
    appendAll(entries) {
      const logs = new Map<LogId, OpenLog>()
      const outcomes = entries.map(entry => append(statements, logs, newEra, entry))
      for (const [log, { seq, seqBefore }] of logs) if (seq !== seqBefore) statements.setSeq.run(seq, log)
      return outcomes
    },
    offer(log, { device, n, text, carrier }, mostByCarrier) {
      const { count } = statements.countOffers.get(log, carrier) as { count: number }
      if (count >= mostByCarrier) return false
      return Number(statements.addOffer.run(log, device, n, text, carrier).changes) > 0
    },
    dropOffer(log, device, n) {
      statements.dropOffer.run(log, device, n)
    },
    bury(log, at) {
      for (const table of ['ops', 'grants', 'voids', 'offered', 'logs']) {
        database.prepare(`DELETE FROM ${table} WHERE log = ?`).run(log)
      }
      database.prepare('INSERT OR IGNORE INTO tombstones (log, at) VALUES (?, ?)').run(log, at)
    },
    idleSince(before) {
      const rows = database
        .prepare('SELECT log FROM logs JOIN ops USING (log, seq) WHERE ops.at < ? LIMIT ?')
        .all(before, mostIdle)
      return (rows as { log: LogId }[]).map(({ log }) => log)
    },
  }
}

type Statements = ReturnType<typeof prepareWrites>

function append(statements: Statements, logs: Map<LogId, OpenLog>, newEra: () => string, entry: Entry): Outcome {
  const open = logs.get(entry.log) ?? openLog(statements, newEra, entry)
  if ('kind' in open) return open
  logs.set(entry.log, open)
  if (entry.creates && open.seq > 0) return { kind: 'weigh again' }
  const refusal = refusalOf(statements, open, entry)
  // An op that is stored already is so whatever has become of its sender's rights.
  if (refusal) return heldOutcome(statements, entry) ?? refusal
  const { log, device, n, scope, text, at, carrier } = entry
  const seq = open.seq + 1
  const { changes } = statements.insertOp.run(log, seq, device, n, scope, text, at, carrier)
  if (Number(changes) === 0) return heldOutcome(statements, entry) ?? { kind: 'later', reason: 'database' }
  open.seq = seq
  if (open.hasOffers) statements.dropOffer.run(log, device, n)
  writeAccess(statements, open, entry)
  return { kind: 'stored', seq }
}

function openLog(statements: Statements, newEra: () => string, { log, creates, at }: Entry): OpenLog | Outcome {
  const head = statements.head.get(log) as { seq: number } | undefined
  if (head) {
    const hasVoids = statements.anyVoid.get(log) !== undefined
    return { seq: head.seq, seqBefore: head.seq, hasVoids, hasOffers: statements.anyOffer.get(log) !== undefined }
  }
  if (statements.tombstone.get(log)) return { kind: 'refused', code: 'deleted', path: 'log' }
  if (!creates) return { kind: 'later', reason: 'key unknown' }
  statements.makeLog.run(log, newEra(), at)
  return { seq: 0, seqBefore: 0, hasVoids: false, hasOffers: false }
}

function heldOutcome(statements: Statements, { log, device, n, text }: Entry): Outcome | null {
  const held = statements.found.get(log, device, n) as { seq: number; text: string } | undefined
  if (!held) return null
  return held.text === text
    ? { kind: 'already stored', seq: held.seq }
    : { kind: 'refused', code: 'identity taken', path: 'n' }
}

function refusalOf(statements: Statements, { hasVoids }: OpenLog, entry: Entry): Outcome | null {
  const { log, under, claims, mayRegrant } = entry
  const isVoid = (kind: string, name: string) => hasVoids && statements.voided.get(log, kind, name) !== undefined
  if (under !== null && isVoid(under.kind, under.name)) return { kind: 'refused', code: 'voided', path: '' }
  for (const claim of claims) {
    if (isVoid(claim.kind, claim.name)) return { kind: 'refused', code: 'voided', path: claim.path }
    const row = statements.grant.get(log, claim.kind, claim.name) as GrantRow | undefined
    if (row && !maySucceed(row, claim, mayRegrant)) return { kind: 'refused', code: 'key taken', path: claim.path }
  }
  return null
}

/** The first writer of a name keeps its hash; only one who may grant changes its role. */
const maySucceed = (row: GrantRow, claim: Claim, mayRegrant: boolean): boolean =>
  row.hash === claim.hash && (mayRegrant || (row.role === claim.role && row.grp === claim.group))

function writeAccess(statements: Statements, open: OpenLog, { log, claims, voidings }: Entry): void {
  for (const { kind, name, hash, role, group } of claims) statements.setGrant.run(log, kind, name, hash, role, group)
  for (const { kind, name, stands } of voidings) {
    if (stands) statements.addVoid.run(log, kind, name)
    else statements.endVoid.run(log, kind, name)
    open.hasVoids = true
  }
}

const prepareWrites = (database: Database) => ({
  head: database.prepare('SELECT seq FROM logs WHERE log = ?'),
  anyVoid: database.prepare('SELECT 1 FROM voids WHERE log = ? LIMIT 1'),
  anyOffer: database.prepare('SELECT 1 FROM offered WHERE log = ? LIMIT 1'),
  tombstone: database.prepare('SELECT 1 FROM tombstones WHERE log = ?'),
  makeLog: database.prepare('INSERT INTO logs (log, era, seq, at) VALUES (?, ?, 0, ?)'),
  setSeq: database.prepare('UPDATE logs SET seq = ? WHERE log = ?'),
  found: database.prepare('SELECT seq, text FROM ops WHERE log = ? AND device = ? AND n = ?'),
  voided: database.prepare('SELECT 1 FROM voids WHERE log = ? AND kind = ? AND name = ?'),
  grant: database.prepare('SELECT hash, role, grp FROM grants WHERE log = ? AND kind = ? AND name = ?'),
  insertOp: database.prepare(
    `INSERT INTO ops (log, seq, device, n, scope, text, at, carrier) VALUES (?, ?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT (log, device, n) DO NOTHING`,
  ),
  setGrant: database.prepare(
    'INSERT OR REPLACE INTO grants (log, kind, name, hash, role, grp) VALUES (?, ?, ?, ?, ?, ?)',
  ),
  addVoid: database.prepare('INSERT OR IGNORE INTO voids (log, kind, name) VALUES (?, ?, ?)'),
  endVoid: database.prepare('DELETE FROM voids WHERE log = ? AND kind = ? AND name = ?'),
  addOffer: database.prepare('INSERT OR IGNORE INTO offered (log, device, n, text, carrier) VALUES (?, ?, ?, ?, ?)'),
  countOffers: database.prepare('SELECT count(*) AS count FROM offered WHERE log = ? AND carrier = ?'),
  dropOffer: database.prepare('DELETE FROM offered WHERE log = ? AND device = ? AND n = ?'),
})
