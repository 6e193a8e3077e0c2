import type { SideNet } from './hole-by-nets.ts'

/** A net score of a hole that is over: a ball picked up is worse than any number, and two of them are level. */
export type KnownNet = NonNullable<SideNet>

/** Negative, zero or positive as the first is better than, level with or worse than the second. */
export function compareNets(first: KnownNet, second: KnownNet): number {
  if (first === second) return 0
  if (first === 'picked-up') return 1
  return second === 'picked-up' ? -1 : first - second
}
