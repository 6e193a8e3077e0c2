import { describe, expect, it } from 'vitest'
import {
  individualStrokePlayAllowance,
  playerAllowances,
  sideAllowances,
  smallFieldBelow,
} from '#core/handicap/allowance.ts'

describe('allowances (Rules of Handicapping, Appendix C, USGA and R&A, 2024)', () => {
  it('are the printed percentages', () => {
    expect(Object.values(playerAllowances)).toEqual([
      95, 95, 95, 95, 85, 85, 90, 75, 85, 100, 100, 75, 80, 90, 100, 100, 90, 100,
    ])
  })

  it.each([
    ['foursomes', [50, 50]],
    ['greensomes', [60, 40]],
    ['chapman', [60, 40]],
    ['scramble-of-2', [35, 15]],
    ['scramble-of-3', [30, 20, 10]],
    ['scramble-of-4', [25, 20, 15, 10]],
  ] as const)('share a side of %s as %j, lowest first', (format, shares) => {
    expect(sideAllowances[format]).toEqual(shares)
  })
})

describe('allowance by size of field (clarification C/1; the figures from memory)', () => {
  it('is the whole handicap in a field of fewer than thirty, where chosen', () => {
    expect(smallFieldBelow).toBe(30)
    expect(individualStrokePlayAllowance('full-in-small-field', 29)).toBe(100)
    expect(individualStrokePlayAllowance('full-in-small-field', 30)).toBe(95)
  })

  it('is the printed figure for any field, where chosen', () => {
    expect(individualStrokePlayAllowance('as-for-medium-field', 12)).toBe(95)
  })
})
