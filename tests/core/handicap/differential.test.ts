import { describe, expect, it } from 'vitest'
import {
  combineTwoNines,
  combineWithExpected,
  differentialTenths,
  scoreDifferential9,
  scoreDifferential18,
  scoreDifferentialStableford,
} from '#core/handicap/differential.ts'
import { fraction } from '#core/values/fraction.ts'

const score = { adjustedGross: 90, courseRatingTenths: 720, slope: 113, playingConditions: 0 } as const

describe('score differential (Rules of Handicapping 5.1, USGA, 2020 and 2024)', () => {
  it('is the score over the rating where the slope is standard', () => {
    expect(scoreDifferential18(score)).toEqual(fraction(18))
  })

  it('falls by the playing conditions, and by half of them over nine holes', () => {
    expect(scoreDifferential18({ ...score, playingConditions: 2 })).toEqual(fraction(16))
    expect(scoreDifferential9({ ...score, playingConditions: 1 })).toEqual(fraction(35, 2))
  })

  it.each([
    ['-1.54', fraction(-154, 100), -15],
    ['-1.55', fraction(-155, 100), -15],
    ['1.55', fraction(155, 100), 16],
    ['-0.05', fraction(-5, 100), 0],
  ])('%s goes to a tenth with a half upward', (_, unrounded, tenths) => {
    expect(differentialTenths(unrounded)).toBe(tenths)
    expect(Object.is(differentialTenths(unrounded), -0)).toBe(false)
  })

  it('rounds an exact half that doubles miss: 113 / 58 x 26.1 is 50.85', () => {
    const unrounded = scoreDifferential18({ ...score, adjustedGross: 97, courseRatingTenths: 709, slope: 58 })
    expect(unrounded).toEqual(fraction(5085, 100))
    expect(differentialTenths(unrounded)).toBe(509)
  })
})

describe('nine-hole scores', () => {
  const nine = { adjustedGross: 42, courseRatingTenths: 356, slope: 120, playingConditions: 0 } as const

  it('are added before anything is rounded (2020)', () => {
    // 113 / 120 x 6.4 twice is 12.0533; rounded first it would be 12.0.
    expect(differentialTenths(combineTwoNines(nine, nine))).toBe(121)
  })

  it('take an expected differential that is given, never computed (2024)', () => {
    expect(combineWithExpected(fraction(72, 10), fraction(85, 10))).toEqual(fraction(157, 10))
  })
})

describe('differential from Stableford points (formula from memory)', () => {
  it('takes 36 points off the full Course Handicap for par and Course Handicap', () => {
    const rated = { par: 72, courseHandicap: 18, courseRatingTenths: 720, slope: 113, playingConditions: 0 } as const
    expect(scoreDifferentialStableford({ ...rated, points: 36 })).toEqual(fraction(18))
    expect(scoreDifferentialStableford({ ...rated, points: 30 })).toEqual(fraction(24))
  })
})
