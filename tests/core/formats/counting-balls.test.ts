import { describe, expect, it } from 'vitest'
import { sideNetOf } from '#tests/kit/played-game.ts'

describe('counting scores of a side', () => {
  it('take the better of two (Rules of Golf 23.2a, 2019 and 2023)', () => {
    expect(sideNetOf([5, 4], 1)).toBe(4)
    expect(sideNetOf(['picked-up', 6], 1)).toBe(6)
  })

  it('take the best few of four (common practice)', () => {
    expect(sideNetOf([4, 5, 3, 'picked-up'], 2)).toBe(7)
    expect(sideNetOf([4, 5, 3, 9], 4)).toBe(21)
  })

  it('are none where too few were holed', () => {
    expect(sideNetOf([4, 'picked-up', 'picked-up', 'picked-up'], 2)).toBeNull()
    expect(sideNetOf(['picked-up', 'picked-up'], 1)).toBeNull()
  })
})
