import { describe, expect, it } from 'vitest'
import { adviseOnStrokeIndexes } from '#core/handicap/stroke-index-advice.ts'

/** Lowest of each nine in its middle three, second lowest in the first or last three, nothing low side by side. */
const recommended = [13, 3, 15, 11, 1, 7, 17, 5, 9, 14, 4, 16, 12, 2, 8, 18, 6, 10]
const changed = (changes: Readonly<Record<number, number>>): number[] =>
  recommended.map((each, at) => changes[at + 1] ?? each)

describe('advice on stroke indexes (Rules of Handicapping, Appendix E, R&A, 2020 and 2024)', () => {
  it('finds nothing in a table that follows the recommendations', () => {
    expect(adviseOnStrokeIndexes(recommended)).toEqual({
      isPermutation: true,
      hasOddEvenSplit: true,
      hasLowestInMiddle: true,
      hasSecondLowestApart: true,
      hasNoLowNeighbours: true,
    })
  })

  it('takes even numbers on the front nine as well', () => {
    const swapped = [...recommended.slice(9), ...recommended.slice(0, 9)]
    expect(adviseOnStrokeIndexes(swapped).hasOddEvenSplit).toBe(true)
  })

  it('sees a number twice', () => {
    expect(adviseOnStrokeIndexes(changed({ 9: 13 })).isPermutation).toBe(false)
  })

  it('sees odd and even numbers on one nine', () => {
    expect(adviseOnStrokeIndexes(changed({ 1: 14, 10: 13 })).hasOddEvenSplit).toBe(false)
  })

  it('sees the lowest outside the middle three', () => {
    expect(adviseOnStrokeIndexes(changed({ 1: 1, 5: 13 })).hasLowestInMiddle).toBe(false)
  })

  it('sees the second lowest in the middle, or with the lowest', () => {
    expect(adviseOnStrokeIndexes(changed({ 2: 7, 6: 3 })).hasSecondLowestApart).toBe(false)
    expect(adviseOnStrokeIndexes(changed({ 1: 1, 5: 13 })).hasSecondLowestApart).toBe(false)
  })

  it('sees 6 or less side by side, at the turn too, but not from the 18th to the 1st', () => {
    expect(adviseOnStrokeIndexes(changed({ 4: 5, 8: 11 })).hasNoLowNeighbours).toBe(false)
    expect(adviseOnStrokeIndexes(changed({ 9: 5, 8: 9, 10: 6, 17: 14 })).hasNoLowNeighbours).toBe(false)
    expect(adviseOnStrokeIndexes(changed({ 1: 5, 2: 13, 8: 3, 18: 6, 17: 10 })).hasNoLowNeighbours).toBe(true)
  })
})
