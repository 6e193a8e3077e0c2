import { emptyLog, foldOps, type LogState } from '#core/log/fold.ts'
import { type Op, opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import type { HeldOp } from './held-op.ts'
import type { Change, LogRecord, StoredLog } from './log-store.ts'
import { byPlace, isWaiting } from './memory-store.ts'

/** What the page holds of one log: the record, the ops and their fold. Replaced as a whole at each change. */
export interface Holding {
  readonly record: LogRecord
  /** By identity, in order of place. */
  readonly ops: ReadonlyMap<OpId, HeldOp>
  /** The fold of every op that is not refused. */
  readonly state: LogState
}

const isShown = ({ mark }: HeldOp): boolean => mark.kind !== 'refused'

const opsShown = (ops: Iterable<HeldOp>): Op[] => [...ops].filter(isShown).map(({ op }) => op)

export const holdingOf = ({ record, ops }: StoredLog): Holding => ({
  record,
  ops: new Map(byPlace(ops).map(held => [opIdOf(held.op), held])),
  state: foldOps(emptyLog, opsShown(ops)),
})

/** The holding after a change. The fold goes on from where it was unless an op left it or changed in it. */
export function holdingAfter(holding: Holding, { put = [], remove = [], record }: Change): Holding {
  const ops = new Map(holding.ops)
  for (const id of remove) ops.delete(id)
  for (const held of put) ops.set(opIdOf(held.op), held)
  const state = leavesFold(holding, put, remove)
    ? foldOps(emptyLog, opsShown(ops.values()))
    : foldOps(holding.state, opsShown(put))
  return { record: record ? record(holding.record) : holding.record, ops, state }
}

function leavesFold(holding: Holding, put: readonly HeldOp[], remove: readonly OpId[]): boolean {
  const wasShown = (id: OpId): HeldOp | null => {
    const held = holding.ops.get(id)
    return held && isShown(held) ? held : null
  }
  if (remove.some(id => wasShown(id) !== null)) return true
  return put.some(held => {
    const before = wasShown(opIdOf(held.op))
    return before !== null && (!isShown(held) || before.text !== held.text)
  })
}

/** What is shown here and no server is known to have, in the order of sending. */
export const waitingOps = ({ ops }: Holding): HeldOp[] => [...ops.values()].filter(isWaiting)

export const feedSeq = ({ feeds }: LogRecord, feed: string): number => feeds.find(([name]) => name === feed)?.[1] ?? 0

/** The record with a feed complete up to this sequence; it never goes back within an era. */
export function withFeedSeq(record: LogRecord, feed: string, upTo: number): LogRecord {
  const others = record.feeds.filter(([name]) => name !== feed)
  return { ...record, feeds: [...others, [feed, Math.max(upTo, feedSeq(record, feed))]] }
}

/** The record where this phone's own ops up to `n` are known: an old copy of a storage never draws them again. */
export function withOwnNumbers(record: LogRecord, ops: readonly HeldOp[]): LogRecord {
  const own = ops.filter(({ op }) => op.device === record.device).map(({ op }) => op.n)
  return { ...record, nextN: Math.max(record.nextN, ...own.map(n => n + 1)) }
}
