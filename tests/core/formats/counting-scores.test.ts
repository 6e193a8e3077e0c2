import { describe, expect, it } from 'vitest'
import { bestScores } from '#core/formats/counting-scores.ts'

describe('counting scores of a side', () => {
  it('take the better of two (Rules of Golf 23.2a, 2019 and 2023)', () => {
    expect(bestScores([5, 4], 1)).toBe(4)
    expect(bestScores(['picked-up', 6], 1)).toBe(6)
  })

  it('take the best few of four (common practice)', () => {
    expect(bestScores([4, 5, 3, 'picked-up'], 2)).toBe(7)
    expect(bestScores([4, 5, 3, 9], 4)).toBe(21)
  })

  it('are none where too few were holed', () => {
    expect(bestScores([4, 'picked-up', 'picked-up', 'picked-up'], 2)).toBeNull()
    expect(bestScores(['picked-up', 'picked-up'], 1)).toBeNull()
  })
})
