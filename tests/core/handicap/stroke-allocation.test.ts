import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'

const front = [7, 15, 5, 11, 1, 17, 3, 13, 9]
const back = [8, 16, 6, 12, 2, 18, 4, 14, 10]
const anyIndexes = fc.array(fc.integer({ min: 1, max: 18 }), { minLength: 1, maxLength: 36 })
const anyHandicap = fc.integer({ min: -60, max: 120 })

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0)

describe('stroke allocation (Rules of Handicapping Appendix E, R&A and USGA, 2020 and 2024)', () => {
  it('gives the first stroke where the index is lowest', () => {
    expect(allocateStrokes(1, [...front, ...back]).indexOf(1)).toBe(4)
  })

  it('starts again at the lowest index after a stroke on every hole', () => {
    expect(Math.max(...allocateStrokes(18, [...front, ...back]))).toBe(1)
    expect(allocateStrokes(19, [...front, ...back]).indexOf(2)).toBe(4)
  })

  it('ranks nine holes of an eighteen-hole card among themselves', () => {
    expect(allocateStrokes(5, front)).toEqual([1, 0, 1, 0, 1, 0, 1, 0, 1])
    expect(allocateStrokes(5, back)).toEqual([1, 0, 1, 0, 1, 0, 1, 0, 1])
  })

  it('lets a plus player give back from the highest index (Appendix C)', () => {
    expect(allocateStrokes(-2, back)).toEqual([0, -1, 0, 0, 0, -1, 0, 0, 0])
  })

  it('goes over every hole for a plus player too (derived)', () => {
    expect(allocateStrokes(-10, front)).toEqual([-1, -1, -1, -1, -1, -2, -1, -1, -1])
  })

  it('takes a misprinted index in the order of the card (own choice)', () => {
    expect(allocateStrokes(2, [3, 1, 2, 2])).toEqual([0, 1, 1, 0])
  })

  it('gives nothing where there are no holes', () => {
    expect(allocateStrokes(5, [])).toEqual([])
  })

  it('adds up to the playing handicap and differs by one stroke at most between holes', () => {
    fc.assert(
      fc.property(anyHandicap, anyIndexes, (handicap, indexes) => {
        const strokes = allocateStrokes(handicap, indexes)
        expect(sum(strokes)).toBe(handicap)
        expect(Math.max(...strokes) - Math.min(...strokes)).toBeLessThanOrEqual(1)
      }),
    )
  })

  it('never gives a hole fewer strokes than a hole of higher index', () => {
    fc.assert(
      fc.property(anyHandicap, anyIndexes, (handicap, indexes) => {
        const holes = allocateStrokes(handicap, indexes).map((strokes, at) => ({ strokes, index: indexes[at] ?? 0 }))
        for (const one of holes) {
          for (const other of holes) {
            if (one.index < other.index) expect(one.strokes).toBeGreaterThanOrEqual(other.strokes)
          }
        }
      }),
    )
  })
})
