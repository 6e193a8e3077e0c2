import type { HeldOp } from '#client/sync/held-op.ts'
import { afterDraw, type Change, joinRecords, type LogRecord, type LogStore } from '#client/sync/log-store.ts'
import { byPlace, isWaiting } from '#client/sync/memory-store.ts'
import { opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import type { Life, World } from './world.ts'

/** What a phone's storage holds of its log at one moment; never changed, only replaced. */
export interface Kept {
  readonly record: LogRecord
  readonly ops: ReadonlyMap<OpId, HeldOp>
}

/** A phone's storage. It outlives the pages that write it. */
export interface Disk {
  kept: Kept | null
  /** Every write fails, and one in five is done all the same. */
  isFailing: boolean
  /** Milliseconds that a write takes at most. */
  slowestMs: number
  /** As one page of the phone sees it: what it asked for and has not heard when it ends, it never hears. */
  open(life: Life): LogStore
}

/** `spoil` plants a fault in every write. */
export function createDisk(world: World, spoil: (kept: Kept) => Kept = kept => kept): Disk {
  const disk: Disk = {
    kept: null,
    isFailing: false,
    slowestMs: 6,
    open: life => {
      const transact = <Answer>(work: (kept: Kept | null) => { kept: Kept | null; answer: Answer }): Promise<Answer> =>
        new Promise((resolve, reject) => {
          world.after(world.dice.between(1, disk.slowestMs), life, () => {
            const isDone = !disk.isFailing || world.dice.chance(0.2)
            try {
              const { kept, answer } = work(disk.kept)
              if (isDone) disk.kept = kept && spoil(kept)
              const heard = disk.isFailing ? () => reject(new Error('the disk fails')) : () => resolve(answer)
              world.after(world.dice.between(0, 2), life, heard)
            } catch (error) {
              reject(error)
            }
          })
        })
      return storeOver(transact)
    },
  }
  return disk
}

type Transact = <Answer>(work: (kept: Kept | null) => { kept: Kept | null; answer: Answer }) => Promise<Answer>

function storeOver(transact: Transact): LogStore {
  const present = (kept: Kept | null): Kept => {
    if (kept === null) throw new Error('no log is stored here')
    return kept
  }
  return {
    list: () =>
      transact(kept => {
        const waiting = kept === null ? 0 : [...kept.ops.values()].filter(isWaiting).length
        return { kept, answer: kept === null ? [] : [{ record: kept.record, waiting }] }
      }),
    load: () =>
      transact(kept => ({ kept, answer: kept && { record: kept.record, ops: byPlace([...kept.ops.values()]) } })),
    save: (record, ops) =>
      transact(kept => {
        const all = new Map(kept?.ops)
        for (const held of ops) all.set(opIdOf(held.op), held)
        return { kept: { record: joinRecords(record, kept?.record), ops: all }, answer: undefined }
      }),
    append: (_log, make) =>
      transact(before => {
        const kept = present(before)
        const held = make(kept.record)
        const ops = new Map(kept.ops).set(opIdOf(held.op), held)
        return { kept: { record: afterDraw(kept.record, held), ops }, answer: held }
      }),
    change: (_log, change) => transact(kept => ({ kept: changed(present(kept), change), answer: undefined })),
    remove: () => transact(() => ({ kept: null, answer: undefined })),
  }
}

function changed({ record, ops }: Kept, { put = [], remove = [], record: next }: Change): Kept {
  const all = new Map(ops)
  for (const id of remove) all.delete(id)
  for (const held of put) all.set(opIdOf(held.op), held)
  return { record: next ? next(record) : record, ops: all }
}
