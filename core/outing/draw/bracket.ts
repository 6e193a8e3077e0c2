import { assert } from '#core/values/assert.ts'

/** A knock-out bracket for so many entries; byes go to the lowest numbers of the draw. */
export interface Bracket {
  /** The next power of two. */
  readonly size: number
  readonly byes: number
}

/** Source: Committee Procedures 5F; R&A and USGA; 2019 and 2023. Sizes and byes are common practice. */
export function bracketFor(entries: number): Bracket {
  assert(Number.isSafeInteger(entries) && entries >= 1, 'bracketFor: at least one entry')
  let size = 1
  while (size < entries) size *= 2
  return { size, byes: size - entries }
}

/**
 * Pairs of the first round in the order of the general numerical draw, by draw number: the top two in opposite halves, the
 * top four in opposite quarters and so on, each pair adding up to one more than the size of the bracket.
 * Source: Committee Procedures 5F; R&A and USGA; 2019 and 2023. The order of the pairs on the chart is from memory.
 */
export function firstRoundPairs(bracketSize: number): [number, number][] {
  assert(bracketSize >= 2 && bracketFor(bracketSize).byes === 0, 'firstRoundPairs: a power of two')
  let pairs: [number, number][] = [[1, 2]]
  for (let size = 4; size <= bracketSize; size *= 2) pairs = pairs.flat().map(each => [each, size + 1 - each])
  return pairs
}
