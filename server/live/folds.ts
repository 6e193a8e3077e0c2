import { emptyLog, foldOps, type LogState } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import { snapshotOf } from '#core/log/snapshot.ts'
import type { LogId } from '#core/values/ids.ts'
import type { SnapshotAnswer } from '#shared/messages/snapshot.ts'
import type { Store } from '../store/store.ts'

/** Logs whose fold is kept at hand; the one unused for longest goes first. */
const mostKept = 100
const opsInRead = 2_000

interface Fold {
  readonly era: string
  readonly upTo: number
  readonly state: LogState
  answer: SnapshotAnswer | null
}

/** The fold of each log, kept and carried on; the same state gives the same answer object. */
export interface Folds {
  snapshot(log: LogId, era: string, upTo: number): Promise<SnapshotAnswer>
  forget(log: LogId): void
}

export function createFolds(store: Store): Folds {
  const kept = new Map<LogId, Fold>()

  const foldUpTo = async (log: LogId, era: string, upTo: number): Promise<Fold> => {
    const before = kept.get(log)
    const isUsable = before?.era === era && before.upTo <= upTo
    let fold: Fold = isUsable ? before : { era, upTo: 0, state: emptyLog, answer: null }
    while (fold.upTo < upTo) {
      const rows = await store.read(log, {
        feed: 'all',
        after: fold.upTo,
        upTo,
        limit: opsInRead,
        textLength: Infinity,
      })
      const last = rows.at(-1)
      if (!last) break
      const ops = rows.map(([, text]) => JSON.parse(text) as Op)
      fold = { era, upTo: last[0], state: foldOps(fold.state, ops), answer: null }
    }
    kept.delete(log)
    kept.set(log, fold)
    const [oldest] = kept.keys()
    if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest)
    return fold
  }

  return {
    async snapshot(log, era, upTo) {
      const fold = await foldUpTo(log, era, upTo)
      fold.answer ??= answerOf(fold)
      return fold.answer
    },
    forget: log => void kept.delete(log),
  }
}

/** The schema's arrays are not readonly, core's are; nobody writes to either. */
const answerOf = ({ era, upTo, state }: Fold): SnapshotAnswer =>
  ({ kind: 'snapshot', era, upTo, snapshot: snapshotOf(state) }) as unknown as SnapshotAnswer
