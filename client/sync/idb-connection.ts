import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import type { HeldOp } from './held-op.ts'
import type { LogRecord } from './log-store.ts'

/** An op as a row: one that waits also stands in the index `waiting`. */
export interface OpRow extends Omit<HeldOp, 'op'> {
  readonly log: LogId
  readonly device: DeviceId
  readonly n: number
  readonly waitingIn?: LogId
}

interface Tables extends DBSchema {
  logs: { key: LogId; value: LogRecord }
  ops: { key: [LogId, DeviceId, number]; value: OpRow; indexes: { waiting: LogId } }
}

export type Database = IDBPDatabase<Tables>

const openLimitMs = 3_000
const workLimitMs = 8_000

/**
 * A database that is opened when it is first needed. A lost connection is opened again once; an open that is held up by
 * another page ends after 3 s, and the next call tries again.
 */
export function createConnection(name: string) {
  let opening: Promise<Database> | null = null
  const drop = (): void => {
    opening = null
  }
  const open = (): Promise<Database> => {
    opening ??= openDatabase(name, drop)
    opening.catch(drop)
    return opening
  }
  /** An open that never ends must not be waited for again; one that ends late is let go of. */
  const opened = async (): Promise<Database> => {
    const tried = open()
    try {
      return await withLimit(tried, openLimitMs)
    } catch (error) {
      if (opening === tried) drop()
      tried.then(
        db => db.close(),
        () => undefined,
      )
      throw error
    }
  }
  const attempt = async <T>(work: (db: Database) => Promise<T>): Promise<T> =>
    withLimit(work(await opened()), workLimitMs)
  const run = async <T>(work: (db: Database) => Promise<T>): Promise<T> => {
    try {
      return await attempt(work)
    } catch (error) {
      if (!isLostConnection(error)) throw error
      drop()
      return attempt(work)
    }
  }
  return { run }
}

/** The versions only ever add: an older page goes on with what it knows. */
const openDatabase = (name: string, drop: () => void): Promise<Database> =>
  openDB<Tables>(name, 1, {
    upgrade(db, oldVersion) {
      if (oldVersion >= 1) return
      db.createObjectStore('logs', { keyPath: 'log' })
      db.createObjectStore('ops', { keyPath: ['log', 'device', 'n'] }).createIndex('waiting', 'waitingIn')
    },
    blocking(_current, _blocked, event) {
      ;(event.target as IDBDatabase).close()
      drop()
    },
    terminated: drop,
  })

const lostNames = ['InvalidStateError', 'UnknownError', 'AbortError', 'TransactionInactiveError']

const isLostConnection = (error: unknown): boolean => error instanceof Error && lostNames.includes(error.name)

async function withLimit<T>(work: Promise<T>, limitMs: number): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined
  const limit = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('storage does not answer')), limitMs)
  })
  try {
    return await Promise.race([work, limit])
  } finally {
    clearTimeout(timer)
  }
}
