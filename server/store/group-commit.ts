import { resultCodeOf, troubleOf } from './trouble.ts'

/** One transaction of what waits; more than this would hold up everything else for long. */
const mostInCommit = 1_000

/** While ops come from many at once, commits keep this far apart: each costs a write of the disk, however small. */
const betweenCommitsMs = 2

export interface GroupCommit<Item, Result> {
  /** Resolves once the item is durable, in the order of the calls. */
  add(item: Item): Promise<Result>
  /** Commits everything that waits, now. */
  flush(): void
}

interface Waiting<Item, Result> {
  readonly item: Item
  readonly resolve: (result: Result) => void
}

/** When the next commit comes; a simulation brings its own. */
export interface CommitTiming {
  /** Milliseconds from any beginning. */
  now(): number
  /** After what came in together. */
  soon(work: () => void): void
  after(delayMs: number, work: () => void): void
}

const loopTiming: CommitTiming = {
  now: () => performance.now(),
  soon: work => void setImmediate(work),
  after: (delayMs, work) => void setTimeout(work, delayMs),
}

/** Collects what comes in during one turn of the event loop and commits it together. */
export function createGroupCommit<Item, Result>({
  commit,
  failed,
  timing = loopTiming,
}: {
  /** All or nothing; throws when nothing was stored. */
  readonly commit: (items: readonly Item[]) => readonly Result[]
  readonly failed: (error: unknown) => Result
  readonly timing?: CommitTiming | undefined
}): GroupCommit<Item, Result> {
  let waiting: Waiting<Item, Result>[] = []
  let isPlanned = false
  let last = { size: 0, at: 0 }

  const plan = () => {
    if (isPlanned || waiting.length === 0) return
    isPlanned = true
    const isBusy = last.size > 1 && timing.now() - last.at < betweenCommitsMs
    if (isBusy) timing.after(betweenCommitsMs, run)
    else timing.soon(run)
  }
  const run = () => {
    isPlanned = false
    drain()
    plan()
  }
  const drain = () => {
    const batch = waiting.slice(0, mostInCommit)
    waiting = waiting.slice(mostInCommit)
    settle(batch)
    last = { size: batch.length, at: timing.now() }
  }
  const settle = (batch: readonly Waiting<Item, Result>[]) => {
    try {
      const results = commit(batch.map(({ item }) => item))
      for (const [index, { resolve }] of batch.entries()) resolve(results[index] as Result)
    } catch (error) {
      settleFailed(batch, error)
    }
  }
  // One item that can never be stored must not hold up the others.
  const settleFailed = (batch: readonly Waiting<Item, Result>[], error: unknown) => {
    const result = failed(error)
    const [first] = batch
    if (batch.length === 1 || isLasting(error)) for (const { resolve } of batch) resolve(result)
    else if (first) for (const one of batch) settle([one])
  }

  return {
    add: item =>
      new Promise(resolve => {
        waiting.push({ item, resolve })
        plan()
      }),
    flush() {
      while (waiting.length > 0) drain()
    },
  }
}

/** BUSY, LOCKED and the disk's faults hit every item alike: trying them one by one would only hold the loop up. */
const isLasting = (error: unknown): boolean => [5, 6].includes(resultCodeOf(error)) || troubleOf(error) === 'disk'
