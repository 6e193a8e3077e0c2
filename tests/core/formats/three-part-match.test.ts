import { describe, expect, it } from 'vitest'
import { threePartMatch } from '#core/formats/three-part-match.ts'

const holes = (won: readonly number[], lost: readonly number[]): (1 | 0 | -1)[] =>
  Array.from({ length: 18 }, (_, at) => (won.includes(at + 1) ? 1 : lost.includes(at + 1) ? -1 : 0))

describe('a match in three parts (common practice)', () => {
  it('plays front nine, back nine and all eighteen apart', () => {
    const expected = { front: 2, back: -1, overall: 1, pointsFirst: 2, pointsSecond: 1, halved: 0 }
    expect(threePartMatch(holes([1, 9], [10]))).toEqual(expected)
  })

  it('goes on after a part is decided', () => {
    expect(threePartMatch(holes([], [1, 2, 3, 4, 5, 6, 7])).front).toBe(-7)
  })

  it('halves a level part', () => {
    expect(threePartMatch(holes([1], [18]))).toMatchObject({ pointsFirst: 1, pointsSecond: 1, halved: 1 })
  })
})
