import type { Logger } from 'pino'

/** The same failure is written so often at most; the rest is counted. */
const againAfterMs = 60_000
const mostKinds = 100

export interface FailureLog {
  failed(error: unknown): void
  /** Since the start. */
  count(): number
}

interface Said {
  readonly at: number
  since: number
}

/** Errors that were answered: a full disk must not be filled by lines about it. */
export function createFailureLog(
  logger: Pick<Logger, 'error' | 'info'>,
  steadyMs: () => number,
  isClosing: () => boolean,
): FailureLog {
  const said = new Map<string, Said>()
  let count = 0
  return {
    failed(error) {
      count++
      const kind = error instanceof Error ? error.message : String(error)
      const last = said.get(kind)
      if (last && steadyMs() - last.at < againAfterMs) {
        last.since++
        return
      }
      if (said.size >= mostKinds) said.clear()
      said.set(kind, { at: steadyMs(), since: 0 })
      // What still comes in while the store closes finds it closed: no fault of anybody.
      logger[isClosing() ? 'info' : 'error']({ err: error, ...(last?.since ? { again: last.since } : {}) }, 'failed')
    },
    count: () => count,
  }
}
