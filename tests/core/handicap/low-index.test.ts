import { describe, expect, it } from 'vitest'
import { lowIndex, lowIndexForCap } from '#core/handicap/low-index.ts'

const newest = 1000
const issued = (...pairs: [number, number][]) => pairs.map(([day, indexTenths]) => ({ day, indexTenths }))

describe('low index (Rules of Handicapping 5.7 and interpretation 5.7/1, R&A)', () => {
  it('includes the 365th day before the newest score and no more', () => {
    expect(lowIndex(issued([newest - 365, 90], [newest, 120]), newest, 20)).toBe(90)
    expect(lowIndex(issued([newest - 366, 90], [newest, 120]), newest, 20)).toBe(120)
  })

  it('includes the newest itself', () => {
    expect(lowIndex(issued([newest - 30, 140], [newest, 126]), newest, 20)).toBe(126)
  })

  it('does not exist below twenty scores', () => {
    expect(lowIndex(issued([newest, 120]), newest, 19)).toBeNull()
  })

  it('for the cap of a new score is the one before it', () => {
    const history = issued([640, 106], [946, 123])
    expect(lowIndexForCap(history, 946)).toBe(106)
    expect(lowIndexForCap(issued([640, 106], [1036, 123]), 1036)).toBe(123)
    expect(lowIndexForCap([], 946)).toBeNull()
  })
})
