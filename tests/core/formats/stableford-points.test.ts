import { describe, expect, it } from 'vitest'
import { stablefordPoints } from '#core/formats/stableford-points.ts'

describe('Stableford points (Rules of Golf 21.1b, R&A and USGA, 2019 and 2023)', () => {
  it.each([
    [9, 0],
    [7, 0],
    [6, 1],
    [5, 2],
    [4, 3],
    [3, 4],
    [2, 5],
    [1, 6],
  ])('a par five in %i earns %i', (gross, points) => {
    expect(stablefordPoints(5, 0, gross)).toBe(points)
  })

  it('count strokes received, and those given back', () => {
    expect(stablefordPoints(4, 2, 5)).toBe(3)
    expect(stablefordPoints(4, -1, 4)).toBe(1)
  })

  it('go on past the printed table (derived)', () => {
    expect(stablefordPoints(5, 2, 1)).toBe(8)
  })

  it('are none for a hole without a score', () => {
    expect(stablefordPoints(4, 3, null)).toBe(0)
  })
})
