import { assert, must } from '#core/values/assert.ts'

/** What the recommendations say of a stroke index table of eighteen. Only a table that is no permutation is wrong. */
export interface StrokeIndexAdvice {
  /** Every number from 1 to 18 once. */
  readonly isPermutation: boolean
  /** Odd numbers on one nine, even ones on the other. */
  readonly hasOddEvenSplit: boolean
  /** The lowest of each nine lies on its three middle holes. The exception for an adjoining hole is not applied. */
  readonly hasLowestInMiddle: boolean
  /** The second lowest of each nine lies on its first or last three holes, and not with the lowest. */
  readonly hasSecondLowestApart: boolean
  /** No two neighbours of 6 or less; the 9th and 10th are neighbours, the 18th and 1st are not. */
  readonly hasNoLowNeighbours: boolean
}

const lowUpTo = 6
const middle = 1

/**
 * Holds a stroke index table, in card order, against the recommendations.
 * Source: Rules of Handicapping, Appendix E; R&A; 2020 and 2024.
 */
export function adviseOnStrokeIndexes(strokeIndexes: readonly number[]): StrokeIndexAdvice {
  assert(strokeIndexes.length === 18, 'adviseOnStrokeIndexes: eighteen holes')
  const nines = [strokeIndexes.slice(0, 9), strokeIndexes.slice(9)]
  return {
    isPermutation: ascending(strokeIndexes).every((each, at) => each === at + 1),
    hasOddEvenSplit: hasOddEvenSplit(nines),
    hasLowestInMiddle: nines.every(nine => threeOf(nine, 0) === middle),
    hasSecondLowestApart: nines.every(nine => threeOf(nine, 1) !== middle && threeOf(nine, 1) !== threeOf(nine, 0)),
    hasNoLowNeighbours: !strokeIndexes.some((each, at) => each <= lowUpTo && (strokeIndexes[at + 1] ?? 18) <= lowUpTo),
  }
}

function hasOddEvenSplit(nines: readonly (readonly number[])[]): boolean {
  const parities = nines.map(nine => new Set(nine.map(each => each % 2)))
  return parities.every(({ size }) => size === 1) && new Set(parities.flatMap(each => [...each])).size === 2
}

/** Which three of a nine (0, 1 or 2) holds its lowest index (`rank` 0), second lowest (1) and so on. */
function threeOf(nine: readonly number[], rank: number): number {
  const value = must(ascending(nine)[rank], 'threeOf: a nine has nine holes')
  return Math.floor(nine.indexOf(value) / 3)
}

const ascending = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b)
