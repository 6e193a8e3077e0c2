import type { DeviceId, LogId } from '#core/values/ids.ts'
import type { Database } from './driver.ts'
import type { Claim, Entry, Offer, Outcome } from './store.ts'

interface GrantRow {
  readonly hash: string
  readonly role: string
  readonly grp: string | null
}

export interface Writes {
  append(entry: Entry): Outcome
  offer(log: LogId, offer: Offer, mostByCarrier: number): boolean
  dropOffer(log: LogId, device: DeviceId, n: number): void
  bury(log: LogId, at: number): void
}

/** What changes the database; the caller opens and ends the transaction. */
export function createWrites(database: Database, newEra: () => string): Writes {
  const statements = prepareWrites(database)

  const append = (entry: Entry): Outcome => {
    const missing = openLog(entry)
    if (missing) return missing
    const stored = statements.found.get(entry.log, entry.device, entry.n) as { seq: number; text: string } | undefined
    if (stored) {
      return stored.text === entry.text
        ? { kind: 'already stored', seq: stored.seq }
        : { kind: 'refused', code: 'identity taken', path: 'n' }
    }
    return refusalOf(entry) ?? insert(entry)
  }

  const openLog = ({ log, creates, at }: Entry): Outcome | null => {
    if (statements.head.get(log)) return creates ? { kind: 'weigh again' } : null
    if (statements.tombstone.get(log)) return { kind: 'refused', code: 'deleted', path: 'log' }
    if (!creates) return { kind: 'later', reason: 'key unknown' }
    statements.makeLog.run(log, newEra(), at)
    return null
  }

  const refusalOf = ({ log, under, claims, mayRegrant }: Entry): Outcome | null => {
    if (under !== null && statements.voided.get(log, 'key', under)) return { kind: 'refused', code: 'voided', path: '' }
    for (const claim of claims) {
      if (statements.voided.get(log, claim.kind, claim.name))
        return { kind: 'refused', code: 'voided', path: claim.path }
      const row = statements.grant.get(log, claim.kind, claim.name) as GrantRow | undefined
      if (row && !maySucceed(row, claim, mayRegrant)) return { kind: 'refused', code: 'key taken', path: claim.path }
    }
    return null
  }

  const insert = (entry: Entry): Outcome => {
    const { log, device, n, scope, text, at, carrier } = entry
    const { seq } = statements.nextSeq.get(log) as { seq: number }
    statements.insertOp.run(log, seq, device, n, scope, text, at, carrier)
    for (const { kind, name, hash, role, group } of entry.claims)
      statements.grantRow.run(log, kind, name, hash, role, group)
    statements.dropOffer.run(log, device, n)
    for (const { kind, name, stands } of entry.voidings) {
      if (stands) statements.addVoid.run(log, kind, name)
      else statements.endVoid.run(log, kind, name)
    }
    return { kind: 'stored', seq }
  }

  return {
    append,
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
  }
}

/** The first writer of a name keeps its hash; only one who may grant changes its role. */
const maySucceed = (row: GrantRow, claim: Claim, mayRegrant: boolean): boolean =>
  row.hash === claim.hash && (mayRegrant || (row.role === claim.role && row.grp === claim.group))

const prepareWrites = (database: Database) => ({
  head: database.prepare('SELECT 1 FROM logs WHERE log = ?'),
  tombstone: database.prepare('SELECT 1 FROM tombstones WHERE log = ?'),
  makeLog: database.prepare('INSERT INTO logs (log, era, seq, at) VALUES (?, ?, 0, ?)'),
  found: database.prepare('SELECT seq, text FROM ops WHERE log = ? AND device = ? AND n = ?'),
  voided: database.prepare('SELECT 1 FROM voids WHERE log = ? AND kind = ? AND name = ?'),
  grant: database.prepare('SELECT hash, role, grp FROM grants WHERE log = ? AND kind = ? AND name = ?'),
  nextSeq: database.prepare('UPDATE logs SET seq = seq + 1 WHERE log = ? RETURNING seq'),
  insertOp: database.prepare(
    'INSERT INTO ops (log, seq, device, n, scope, text, at, carrier) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
  ),
  grantRow: database.prepare(
    'INSERT OR REPLACE INTO grants (log, kind, name, hash, role, grp) VALUES (?, ?, ?, ?, ?, ?)',
  ),
  addVoid: database.prepare('INSERT OR IGNORE INTO voids (log, kind, name) VALUES (?, ?, ?)'),
  endVoid: database.prepare('DELETE FROM voids WHERE log = ? AND kind = ? AND name = ?'),
  addOffer: database.prepare('INSERT OR IGNORE INTO offered (log, device, n, text, carrier) VALUES (?, ?, ?, ?, ?)'),
  countOffers: database.prepare('SELECT count(*) AS count FROM offered WHERE log = ? AND carrier = ?'),
  dropOffer: database.prepare('DELETE FROM offered WHERE log = ? AND device = ? AND n = ?'),
})
