/** Time as the live part sees it; a simulation brings its own. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number
  /** After everything that is already going on, without waiting. */
  soon(work: () => void): void
  /** Returns what calls it off. */
  after(delayMs: number, work: () => void): () => void
}

export const systemClock: Clock = {
  now: () => Date.now(),
  soon: work => void setImmediate(work),
  after(delayMs, work) {
    const timer = setTimeout(work, delayMs)
    return () => clearTimeout(timer)
  },
}
