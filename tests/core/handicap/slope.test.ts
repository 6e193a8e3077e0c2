import { describe, expect, it } from 'vitest'
import { isSlope, slopeFromRatings } from '#core/handicap/slope.ts'
import { fraction } from '#core/values/fraction.ts'

describe('slope (course rating pages of associations)', () => {
  it.each([55, 113, 155])('can be %d', slope => {
    expect(isSlope(slope)).toBe(true)
  })

  it.each([54, 156, 113.5, Number.NaN])('cannot be %d', slope => {
    expect(isSlope(slope)).toBe(false)
  })

  it('is 5.381 for each stroke between the ratings for men, 4.24 for women', () => {
    expect(slopeFromRatings('men', 910, 710)).toEqual(fraction(10762, 100))
    expect(slopeFromRatings('women', 960, 710)).toEqual(fraction(106))
  })
})
