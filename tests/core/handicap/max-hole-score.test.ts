import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stablefordPoints } from '#core/formats/stableford-points.ts'
import { maxHoleScore, netDoubleBogey, netPar } from '#core/handicap/max-hole-score.ts'

describe('the most that a hole counts (Rules of Handicapping 3.1, R&A, 2020 and 2024)', () => {
  it('is par and five before there is an Index', () => {
    expect(maxHoleScore(3, null, 0)).toBe(8)
  })

  it('is net double bogey', () => {
    expect(maxHoleScore(4, 18, 1)).toBe(7)
    expect(maxHoleScore(3, -2, -1)).toBe(4)
  })

  it('stops at par and five with four strokes of a Course Handicap above 54', () => {
    expect(maxHoleScore(4, 58, 4)).toBe(9)
    expect(maxHoleScore(4, 58, 3)).toBe(9)
  })

  it('is the lowest score that earns no Stableford point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 6 }), fc.integer({ min: -2, max: 3 }), (par, strokes) => {
        const most = netDoubleBogey(par, strokes)
        expect(stablefordPoints(par, strokes, most)).toBe(0)
        expect(stablefordPoints(par, strokes, most - 1)).toBe(1)
      }),
    )
  })
})

it('net par is two Stableford points', () => {
  expect(netPar(4, 1)).toBe(5)
  expect(stablefordPoints(4, 1, netPar(4, 1))).toBe(2)
})
