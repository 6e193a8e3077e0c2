import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { opIdOf, partsOfOpId } from '#core/log/op.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { parseOpShape } from '#shared/op.ts'
import type { HeldOp, Mark } from './held-op.ts'
import {
  afterDraw,
  type Change,
  type Draw,
  joinRecords,
  type LogRecord,
  type LogStore,
  type StoredLog,
} from './log-store.ts'
import { byPlace, isWaiting } from './memory-store.ts'

/** An op as a row: one that waits also stands in the index `waiting`. */
interface OpRow {
  readonly log: LogId
  readonly device: DeviceId
  readonly n: number
  readonly text: string
  readonly seq: number | null
  readonly serverAt: number | null
  readonly carrier: DeviceId | null
  readonly mark: Mark
  readonly place: number
  readonly waitingIn?: LogId
}

interface Tables extends DBSchema {
  logs: { key: LogId; value: LogRecord }
  ops: { key: [LogId, DeviceId, number]; value: OpRow; indexes: { waiting: LogId } }
}

type Database = IDBPDatabase<Tables>

const openLimitMs = 3_000
const workLimitMs = 8_000
const strict = { durability: 'strict' } as const

/**
 * IndexedDB: the only place that holds ops and secrets. A lost connection is opened again once; an open that is held
 * up by another page ends after 3 s, and the next call tries again.
 */
export function createIdbStore(name = 'six-threes'): LogStore {
  const connection = createConnection(name)
  const run = connection.run
  return {
    list: () => run(listLogs),
    load: log => run(db => loadLog(db, log)),
    save: (record, ops) => run(db => saveLog(db, record, ops)),
    append: (log, make) => {
      const tries: HeldOp[] = []
      return run(db => appendOp(db, log, make, tries))
    },
    change: (log, change) => run(db => changeLog(db, log, change)),
    remove: log => run(db => removeLog(db, log)),
  }
}

function createConnection(name: string) {
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

async function listLogs(db: Database) {
  const tx = db.transaction(['logs', 'ops'])
  const records = await tx.objectStore('logs').getAll()
  const waiting = tx.objectStore('ops').index('waiting')
  return Promise.all(records.map(async record => ({ record, waiting: await waiting.count(record.log) })))
}

async function loadLog(db: Database, log: LogId): Promise<StoredLog | null> {
  const tx = db.transaction(['logs', 'ops'])
  const [record, rows] = await Promise.all([tx.objectStore('logs').get(log), tx.objectStore('ops').getAll(rowsOf(log))])
  return record ? { record, ops: byPlace(rows.flatMap(heldOfRow)) } : null
}

async function saveLog(db: Database, record: LogRecord, ops: readonly HeldOp[]): Promise<void> {
  const tx = db.transaction(['logs', 'ops'], 'readwrite', strict)
  const logs = tx.objectStore('logs')
  const work = async (): Promise<void> => {
    await logs.put(joinRecords(record, await logs.get(record.log)))
    await Promise.all(ops.map(held => tx.objectStore('ops').put(rowOfHeld(held))))
  }
  await Promise.all([work(), tx.done])
}

async function appendOp(db: Database, log: LogId, make: (draw: Draw) => HeldOp, tries: HeldOp[]): Promise<HeldOp> {
  const tx = db.transaction(['logs', 'ops'], 'readwrite', strict)
  const [logs, ops] = [tx.objectStore('logs'), tx.objectStore('ops')]
  const work = async (): Promise<HeldOp> => {
    // After a lost connection the first try may have been stored all the same.
    for (const earlier of tries) if ((await ops.get(keyOfHeld(earlier)))?.text === earlier.text) return earlier
    const record = await logs.get(log)
    if (!record) throw new Error(`no log ${log}`)
    const held = make(record)
    tries.push(held)
    await Promise.all([ops.add(rowOfHeld(held)), logs.put(afterDraw(record, held))])
    return held
  }
  const [held] = await Promise.all([work(), tx.done])
  return held
}

async function changeLog(db: Database, log: LogId, { put = [], remove = [], record }: Change): Promise<void> {
  const tx = db.transaction(['logs', 'ops'], 'readwrite', strict)
  const [logs, ops] = [tx.objectStore('logs'), tx.objectStore('ops')]
  const changeRecord = async (): Promise<void> => {
    const current = record && (await logs.get(log))
    if (current) await logs.put(record(current))
  }
  const deleted = remove.map(partsOfOpId).map(({ device, n }) => ops.delete([log, device, n]))
  const stored = put.map(held => ops.put(rowOfHeld(held)))
  await Promise.all([...deleted, ...stored, changeRecord(), tx.done])
}

async function removeLog(db: Database, log: LogId): Promise<void> {
  const tx = db.transaction(['logs', 'ops'], 'readwrite', strict)
  await Promise.all([tx.objectStore('logs').delete(log), tx.objectStore('ops').delete(rowsOf(log)), tx.done])
}

const rowsOf = (log: LogId): IDBKeyRange => IDBKeyRange.bound([log], [log, []])

const keyOfHeld = ({ op }: HeldOp): [LogId, DeviceId, number] => [op.log, op.device, op.n]

function rowOfHeld(held: HeldOp): OpRow {
  const { op, text, seq, serverAt, carrier, mark, place } = held
  const row = { log: op.log, device: op.device, n: op.n, text, seq, serverAt, carrier, mark, place }
  return isWaiting(held) ? { ...row, waitingIn: op.log } : row
}

/** A row that cannot be read stays in the store and out of the fold. */
function heldOfRow({ text, seq, serverAt, carrier, mark, place, device, n }: OpRow): HeldOp[] {
  const parsed = parseOpShape(text)
  if (!parsed.ok || opIdOf(parsed.value) !== opIdOf({ device, n })) return []
  return [{ op: parsed.value, text, seq, serverAt, carrier, mark, place }]
}
