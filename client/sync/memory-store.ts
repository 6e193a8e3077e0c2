import { opIdOf } from '#core/log/op.ts'
import type { LogId, OpId } from '#core/values/ids.ts'
import type { HeldOp } from './held-op.ts'
import { afterDraw, type Change, type Draw, joinRecords, type LogRecord, type LogStore } from './log-store.ts'

interface Kept {
  record: LogRecord
  readonly ops: Map<OpId, HeldOp>
}

/** A store that forgets with its page: for tests, and for a simulation that crashes phones. */
export function createMemoryStore(): LogStore {
  const logs = new Map<LogId, Kept>()
  const keptOf = (log: LogId): Kept => {
    const kept = logs.get(log)
    if (!kept) throw new Error(`no log ${log}`)
    return kept
  }
  return {
    list: async () => [...logs.values()].map(({ record, ops }) => ({ record, waiting: countWaiting(ops.values()) })),
    load: async log => {
      const kept = logs.get(log)
      return kept ? { record: kept.record, ops: byPlace([...kept.ops.values()]) } : null
    },
    save: async (record, ops) => {
      const kept = logs.get(record.log) ?? { record, ops: new Map() }
      kept.record = joinRecords(record, kept.record)
      for (const held of ops) kept.ops.set(opIdOf(held.op), held)
      logs.set(record.log, kept)
    },
    append: async (log, make) => appendTo(keptOf(log), make),
    change: async (log, change) => changeKept(keptOf(log), change),
    remove: async log => {
      logs.delete(log)
    },
  }
}

export const isWaiting = ({ mark }: HeldOp): boolean => mark.kind === 'waiting' || mark.kind === 'later'

export const byPlace = (ops: readonly HeldOp[]): readonly HeldOp[] => ops.toSorted((a, b) => a.place - b.place)

function countWaiting(ops: Iterable<HeldOp>): number {
  let count = 0
  for (const held of ops) if (isWaiting(held)) count++
  return count
}

function appendTo(kept: Kept, make: (draw: Draw) => HeldOp): HeldOp {
  const held = make(kept.record)
  kept.record = afterDraw(kept.record, held)
  kept.ops.set(opIdOf(held.op), held)
  return held
}

function changeKept(kept: Kept, { put = [], remove = [], record }: Change): void {
  for (const id of remove) kept.ops.delete(id)
  for (const held of put) kept.ops.set(opIdOf(held.op), held)
  if (record) kept.record = record(kept.record)
}
