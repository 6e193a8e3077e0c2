import type { Clock } from '#client/sync/clock.ts'

export interface FakeClock extends Clock {
  /** Moves time on and runs what falls due, in order. */
  readonly pass: (ms: number) => void
}

/** Time that moves only by hand; chance is always one half. */
export function createFakeClock(): FakeClock {
  let now = 1_000_000
  let due: { readonly at: number; readonly run: () => void }[] = []
  return {
    now: () => now,
    random: () => 0.5,
    after: (delayMs, run) => {
      const timer = { at: now + delayMs, run }
      due.push(timer)
      return () => {
        due = due.filter(other => other !== timer)
      }
    },
    pass: ms => {
      const end = now + ms
      for (;;) {
        const [next] = due.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)
        if (!next) break
        due = due.filter(timer => timer !== next)
        now = Math.max(now, next.at)
        next.run()
      }
      now = end
    },
  }
}

/** Lets every promise and storage request that can go on do so. */
export async function settle(): Promise<void> {
  for (let turn = 0; turn < 20; turn++) await new Promise(resolve => setImmediate(resolve))
}
