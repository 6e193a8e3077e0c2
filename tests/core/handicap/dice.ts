/** Numbers that look random and come again with the same seed. */
export interface Dice {
  /** A whole number, both ends included. */
  readonly between: (least: number, most: number) => number
  readonly oneOf: <T>(values: readonly T[]) => T
  readonly isOneIn: (count: number) => boolean
  readonly shuffled: <T>(values: readonly T[]) => T[]
}

/** `SEED` of the environment, or a new one. */
export const seedOfRun = (): number => Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31))

/** The generator known as mulberry32. */
export function createDice(seed: number): Dice {
  let state = seed | 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const between = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1))
  return {
    between,
    oneOf: values => values[between(0, values.length - 1)] as (typeof values)[number],
    isOneIn: count => between(1, count) === 1,
    shuffled: values =>
      values
        .map(value => ({ value, at: next() }))
        .sort((a, b) => a.at - b.at)
        .map(({ value }) => value),
  }
}
