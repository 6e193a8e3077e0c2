import { describe, expect, it } from 'vitest'
import { exceptionalReduction, reduceRecord, totalReduction } from '#core/handicap/exceptional-score.ts'
import { fraction } from '#core/values/fraction.ts'

const hundredths = (value: number) => fraction(value, 100)

describe('exceptional scores (Rules of Handicapping 5.9, R&A and USGA, 2020 and 2024)', () => {
  it.each([
    [148, 680, -10],
    [140, 700, -10],
    [140, 701, 0],
    [200, 1000, -20],
    [200, 1001, -10],
    [-10, -805, -10],
  ])('an Index of %d tenths and %d hundredths reduce by %d', (index, differential, expected) => {
    expect(exceptionalReduction('differential-unrounded', index, hundredths(differential))).toBe(expected)
  })

  it('differ where the differential is rounded first: 14.0 and 7.04', () => {
    expect(exceptionalReduction('differential-unrounded', 140, hundredths(704))).toBe(0)
    expect(exceptionalReduction('differential-rounded-first', 140, hundredths(704))).toBe(-10)
  })

  it('lower the newest twenty differentials, the exceptional one included, and no more', () => {
    const record = Array.from({ length: 21 }, () => 150)
    expect(reduceRecord(record, -10)).toEqual([...Array.from({ length: 20 }, () => 140), 150])
    expect(reduceRecord([200, 185, 68], -10)).toEqual([190, 175, 58])
  })

  it('add up', () => {
    expect(totalReduction([-10, -20])).toBe(-30)
    expect(totalReduction([])).toBe(0)
  })
})
