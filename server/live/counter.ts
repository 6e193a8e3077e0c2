export interface CounterOptions {
  /** What a key may take in one window. */
  readonly points: number
  readonly windowMs: number
  /** Keys that are told apart in one window. Those beyond share what one has, so that memory stays bounded. */
  readonly mostKeys: number
  readonly now: () => number
}

/** Counts what each key takes in windows of one length; a window that is over is forgotten whole. */
export interface Counter {
  /** Takes one; false when there was none left. */
  take(key: string): boolean
  hasLeft(key: string): boolean
  /** Keys that are counted at the moment. */
  size(): number
}

const allBeyond = ''

export function createCounter({ points, windowMs, mostKeys, now }: CounterOptions): Counter {
  let taken = new Map<string, number>()
  let endsAt = 0

  const slotOf = (key: string): string => {
    const at = now()
    // A clock that was set back ends the window too.
    if (at >= endsAt || at < endsAt - windowMs) {
      taken = new Map()
      endsAt = at + windowMs
    }
    return taken.has(key) || taken.size < mostKeys ? key : allBeyond
  }
  return {
    take(key) {
      const slot = slotOf(key)
      const count = taken.get(slot) ?? 0
      // Counting on would change nothing.
      if (count >= points) return false
      taken.set(slot, count + 1)
      return true
    },
    hasLeft(key) {
      const slot = slotOf(key)
      return (taken.get(slot) ?? 0) < points
    },
    size: () => taken.size,
  }
}
