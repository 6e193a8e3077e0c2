/** Time and chance, passed in so that a test can drive them. */
export interface Clock {
  /** Milliseconds since 1970. */
  readonly now: () => number
  /** Runs once after so long; returns what calls it off. */
  readonly after: (delayMs: number, run: () => void) => () => void
  /** From 0 up to 1. */
  readonly random: () => number
}

/** How long to wait before the next try after so many failures: doubles from 1 s to 30 s, half of it by chance. */
export function backOffMs(failures: number, random: number): number {
  const longest = Math.min(30_000, 1_000 * 2 ** Math.max(0, Math.min(failures - 1, 5)))
  return Math.round(longest * (0.5 + random / 2))
}
