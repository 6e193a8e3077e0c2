import { createDice, type Dice } from './dice.ts'

/** A process or a page: once it is over, nothing that it planned happens any more. */
export interface Life {
  isOver: boolean
}

export const startLife = (): Life => ({ isOver: false })

/** True time and chance of one run. Everything that happens is one event after the other. */
export interface World {
  readonly dice: Dice
  /** True milliseconds since 1970; the clocks of phones and server may say otherwise. */
  now(): number
  /** Returns what calls it off. */
  after(delayMs: number, life: Life, work: () => void): () => void
  /** Does what falls due until then; after each event, with everything that came of it, `each`. */
  run(untilMs: number, each: () => void): Promise<void>
}

interface Event {
  readonly at: number
  readonly order: number
  readonly life: Life
  readonly work: () => void
  isOff: boolean
}

export function createWorld(seed: number): World {
  const queue = createQueue()
  let now = 1_780_000_000_000
  let order = 0
  return {
    dice: createDice(seed),
    now: () => now,
    after(delayMs, life, work) {
      const event: Event = { at: now + Math.max(0, Math.round(delayMs)), order: order++, life, work, isOff: false }
      queue.add(event)
      return () => {
        event.isOff = true
      }
    },
    async run(untilMs, each) {
      for (let event = queue.first(); event && event.at <= untilMs; event = queue.first()) {
        queue.takeFirst()
        if (event.isOff || event.life.isOver) continue
        now = event.at
        event.work()
        await everythingThatFollows()
        each()
      }
      now = untilMs
    },
  }
}

/** Promises that can be kept are kept, with what they lead to. */
const everythingThatFollows = (): Promise<void> => new Promise(resolve => setImmediate(resolve))

/** Earliest first, and of the same time in the order in which they were planned: a binary heap. */
function createQueue() {
  const heap: Event[] = []
  const isBefore = (a: Event, b: Event): boolean => a.at < b.at || (a.at === b.at && a.order < b.order)
  const swapIfBefore = (below: number, above: number): boolean => {
    const [lower, upper] = [heap[below], heap[above]]
    if (!lower || !upper || !isBefore(lower, upper)) return false
    heap[above] = lower
    heap[below] = upper
    return true
  }
  return {
    first: (): Event | undefined => heap[0],
    add(event: Event): void {
      heap.push(event)
      for (let place = heap.length - 1; place > 0; ) {
        const above = (place - 1) >> 1
        if (!swapIfBefore(place, above)) return
        place = above
      }
    },
    takeFirst(): void {
      const last = heap.pop()
      if (heap.length === 0 || last === undefined) return
      heap[0] = last
      for (let place = 0; ; ) {
        const [left, right] = [heap[2 * place + 1], heap[2 * place + 2]]
        if (!left) return
        const child = right && isBefore(right, left) ? 2 * place + 2 : 2 * place + 1
        if (!swapIfBefore(child, place)) return
        place = child
      }
    },
  }
}
