import { assert } from '#core/values/assert.ts'

/**
 * Sizes of the groups that so many balls make: four-balls, with (4 - n mod 4) mod 4 three-balls before them. One, two and
 * five are the exceptions: one ball alone, one two-ball, a three-ball and a two-ball.
 * Common practice.
 */
export function groupSizes(balls: number): number[] {
  assert(Number.isSafeInteger(balls) && balls >= 0, 'groupSizes: a whole number of balls')
  if (balls === 0) return []
  if (balls < 3) return [balls]
  if (balls === 5) return [3, 2]
  const threes = (4 - (balls % 4)) % 4
  const fours = (balls - 3 * threes) / 4
  return [...Array<number>(threes).fill(3), ...Array<number>(fours).fill(4)]
}

/** Balls in the order in which they were thrown, in groups. */
export function groupsThrown<T>(thrown: readonly T[]): T[][] {
  let from = 0
  return groupSizes(thrown.length).map(size => {
    from += size
    return thrown.slice(from - size, from)
  })
}
