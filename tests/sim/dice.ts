/** Chance that a seed decides: the same every time. */
export interface Dice {
  /** From 0 up to 1. */
  next(): number
  /** A whole number from 0 up to, and without, `sides`. */
  below(sides: number): number
  /** From `least` to `most`, both among them. */
  between(least: number, most: number): number
  chance(share: number): boolean
  pick<Item>(items: readonly [Item, ...Item[]]): Item
  shuffled<Item>(items: readonly Item[]): Item[]
}

export function createDice(seed: number): Dice {
  let state = (seed * 0x9e3779b1 + 0x85ebca6b) >>> 0
  // The generator mulberry32, which is in the public domain.
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (sides: number): number => Math.floor(next() * sides)
  return {
    next,
    below,
    between: (least, most) => least + below(most - least + 1),
    chance: share => next() < share,
    pick: items => items[below(items.length)] ?? items[0],
    shuffled: items => {
      const order = [...items]
      for (let place = order.length - 1; place > 0; place--) {
        const other = below(place + 1)
        const [here, there] = [order[place], order[other]]
        if (here === undefined || there === undefined) continue
        order[place] = there
        order[other] = here
      }
      return order
    },
  }
}
