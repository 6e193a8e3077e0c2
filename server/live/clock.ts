/** Time as the live part sees it; a simulation brings its own. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number
  /** After everything that is already going on (answers that are due among it), without waiting. */
  soon(work: () => void): void
  /** Returns what calls it off. */
  after(delayMs: number, work: () => void): () => void
}

export const systemClock: Clock = {
  now: () => Date.now(),
  // Ticks run when no promise is left to settle, so what has just been decided is answered before.
  soon: work => process.nextTick(work),
  after(delayMs, work) {
    const timer = setTimeout(work, delayMs)
    return () => clearTimeout(timer)
  },
}
