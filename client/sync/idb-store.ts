import { opIdOf, partsOfOpId } from '#core/log/op.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { parseOpShape } from '#shared/op.ts'
import type { HeldOp } from './held-op.ts'
import { createConnection, type Database, type OpRow } from './idb-connection.ts'
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

const strict = { durability: 'strict' } as const

/** IndexedDB: the only place that holds ops and secrets. */
export function createIdbStore(name = 'six-threes'): LogStore {
  const { run } = createConnection(name)
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
