import type { Clock } from '../sync/clock.ts'

export const browserClock: Clock = {
  now: () => Date.now(),
  random: () => Math.random(),
  after: (delayMs, run) => {
    const timer = setTimeout(run, delayMs)
    return () => clearTimeout(timer)
  },
}
