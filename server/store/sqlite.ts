import { existsSync } from 'node:fs'
import { StartFault } from '../start-fault.ts'
import { takeDataFolder } from './data-folder.ts'
import { databaseFile, restoredFile } from './database-file.ts'
import { type Database, loadDriver } from './driver.ts'
import { type CommitTiming, createGroupCommit } from './group-commit.ts'
import { createMemory } from './memory.ts'
import { migrate } from './migrations.ts'
import { createReads } from './reads.ts'
import { damageOf, isDamage, lineOf } from './sound.ts'
import type { Entry, Offer, Outcome, Store, StoreTrouble } from './store.ts'
import { inTransaction } from './transaction.ts'
import { troubleOf } from './trouble.ts'
import { createWrites } from './writes.ts'

export interface SqliteOptions {
  readonly folder: string
  readonly now: () => number
  readonly newEra: () => string
  /** A thing that whoever runs the server should know. */
  readonly warn: (line: string) => void
  /** An error that became `later`: for the log. */
  readonly failed: (error: unknown) => void
  /** After each commit of ops: how long it took. */
  readonly committed?: (seconds: number) => void
}

/** The embedded store: one file in a folder that this process alone writes. Fails with a StartFault. */
export async function openSqliteStore(options: SqliteOptions): Promise<Store> {
  const folder = await takeDataFolder(options.folder)
  if (folder.warning) options.warn(folder.warning)
  try {
    if (existsSync(restoredFile(folder.path))) {
      throw new StartFault(`A restore into ${folder.path} was cut short; run npm run restore -- FILE again.`)
    }
    const database = await openDatabase(databaseFile(folder.path), options.now())
    return createSqliteStore(database, folder.release, options)
  } catch (error) {
    folder.release()
    throw error
  }
}

async function openDatabase(path: string, now: number): Promise<Database> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(path)
  try {
    database.exec('PRAGMA busy_timeout = 250; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;')
    // A log that has stopped growing is written faster, the file system having nothing new to note: 4 MB until then.
    database.exec('PRAGMA journal_size_limit = 67108864; PRAGMA wal_autocheckpoint = 1000')
    // What is deleted is written over, not left in free pages.
    database.exec('PRAGMA secure_delete = ON')
    const damage = damageOf(database)
    if (damage !== null) throw damaged(path, damage)
    migrate(database, now)
    assertDurable(database)
    return database
  } catch (error) {
    database.close()
    if (error instanceof StartFault) throw error
    if (isDamage(error)) throw damaged(path, lineOf(error))
    throw new StartFault(`The database ${path} cannot be opened: ${lineOf(error)}.`)
  }
}

const damaged = (path: string, what: string): StartFault =>
  new StartFault(
    `The database ${path} is damaged (${what}). Nothing was changed. Put back the last backup with ` +
      'npm run restore -- FILE; the phones then send what it lacks.',
  )

/** Read back after the first write: what the pragma says right after the switch to WAL can mislead. */
function assertDurable(database: Database): void {
  const { synchronous } = database.prepare('PRAGMA synchronous').get() as { synchronous: number }
  const { journal_mode: journal } = database.prepare('PRAGMA journal_mode').get() as { journal_mode: string }
  if (synchronous !== 2 || journal !== 'wal') {
    throw new StartFault(`The database does not write durably (journal ${journal}, synchronous ${synchronous}).`)
  }
}

/** So that what was deleted is not left in SQLite's own log. While a backup reads, a later checkpoint does it. */
function clearLog(database: Database): void {
  try {
    database.exec('PRAGMA wal_checkpoint(TRUNCATE)')
  } catch {
    // It is deleted all the same.
  }
}

export interface StoreParts extends Pick<SqliteOptions, 'newEra' | 'failed' | 'committed'> {
  readonly timing?: CommitTiming
}

/** A store over a database whose schema is made; `release` lets its folder go. */
export function createSqliteStore(database: Database, release: () => void, parts: StoreParts): Store {
  const { newEra, failed, committed, timing } = parts
  const reads = createReads(database)
  const memory = createMemory(reads)
  const writes = createWrites(database, newEra)
  let lastTrouble: StoreTrouble | null = null
  let isOpen = true

  const transact = <T>(work: () => T): T => {
    const result = inTransaction(database, work)
    lastTrouble = null
    return result
  }
  const noteTrouble = (error: unknown): Outcome => {
    lastTrouble = troubleOf(error)
    failed(error)
    return { kind: 'later', reason: lastTrouble }
  }
  const commits = createGroupCommit<Entry, Outcome>({
    commit: entries => {
      const startedAt = performance.now()
      const outcomes = transact(() => writes.appendAll(entries))
      committed?.((performance.now() - startedAt) / 1_000)
      for (const [index, entry] of entries.entries()) memory.committed(entry, outcomes[index] as Outcome)
      return outcomes
    },
    failed: noteTrouble,
    timing,
  })

  return {
    ...reads,
    headOf: memory.headOf,
    accessOf: memory.accessOf,
    append: entry => (isOpen ? commits.add(entry) : Promise.resolve({ kind: 'later', reason: 'busy' })),
    offer: async (log, offer: Offer, most) => transact(() => writes.offer(log, offer, most)),
    dropOffer: async (log, device, n) => writes.dropOffer(log, device, n),
    async bury(log, at) {
      transact(() => writes.bury(log, at))
      memory.forget(log)
      clearLog(database)
    },
    async buryIdle(before, at) {
      const logs = transact(() => {
        const idle = writes.idleSince(before)
        for (const log of idle) writes.bury(log, at)
        return idle
      })
      for (const log of logs) memory.forget(log)
      if (logs.length > 0) clearLog(database)
      return logs
    },
    trouble: async () => lastTrouble ?? reads.trouble(),
    async close() {
      if (!isOpen) return
      isOpen = false
      commits.flush()
      database.exec('PRAGMA wal_checkpoint(TRUNCATE)')
      database.close()
      release()
    },
  }
}
