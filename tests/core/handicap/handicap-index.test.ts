import { describe, expect, it } from 'vitest'
import {
  averageDifferential,
  capIndex,
  countingDifferentials,
  formatIndex,
  handicapIndex,
  indexTableRow,
} from '#core/handicap/handicap-index.ts'
import { fraction } from '#core/values/fraction.ts'

describe('handicap index (Rules of Handicapping 5.2, R&A and USGA, 2020 and 2024)', () => {
  it.each([
    [[253, 264, 232, 209, 278, 305], 211],
    [[253, 264, 232, 209, 278, 305, 253, 204, 223, 198, 201, 263], 203],
  ])('of the printed record %j is %d tenths (Danish union)', (record, expected) => {
    expect(handicapIndex(record, 'from-three-scores')).toBe(expected)
  })

  it.each([
    [[153, 152, 166], 132],
    [[407, 424, 361], 341],
  ])('of the printed record %j is %d tenths (R&A, interpretations of 2020)', (record, expected) => {
    expect(handicapIndex(record, 'from-three-scores')).toBe(expected)
  })

  it('does not exist below three scores, except where a union issues one sooner', () => {
    expect(handicapIndex([200, 210], 'from-three-scores')).toBeNull()
    expect(averageDifferential([], 'from-one-score')).toBeNull()
    expect(handicapIndex([200, 210], 'from-one-score')).toBe(180)
  })

  it('never counts a 21st differential, however low', () => {
    const twenty = Array.from({ length: 20 }, () => 150)
    expect(handicapIndex([...twenty, 10], 'from-three-scores')).toBe(150)
    expect(countingDifferentials([...twenty, 10], 'from-three-scores')).toEqual(twenty.slice(0, 8))
  })

  it('takes a negative half upward', () => {
    expect(averageDifferential([-11, -14, 2, 10, 20, 25, 30], 'from-three-scores')).toEqual(fraction(-25, 2))
    expect(handicapIndex([-11, -14, 2, 10, 20, 25, 30], 'from-three-scores')).toBe(-12)
  })

  it('is held at 54.0', () => {
    expect([539, 540, 541].map(capIndex)).toEqual([539, 540, 540])
    expect(handicapIndex([584, 601, 610], 'from-three-scores')).toBe(540)
  })

  it('reads every row of the table', () => {
    const lowest = Array.from({ length: 22 }, (_, at) => indexTableRow(at, 'from-three-scores')?.lowest ?? 0)
    expect(lowest).toEqual([0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 5, 6, 6, 7, 8, 8])
  })
})

describe('an Index as it is written', () => {
  it.each([
    [-15, '+1.5'],
    [-1, '+0.1'],
    [0, '0.0'],
    [120, '12.0'],
    [540, '54.0'],
  ])('%d tenths is %s', (tenths, text) => {
    expect(formatIndex(tenths)).toBe(text)
  })
})
