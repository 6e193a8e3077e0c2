import { describe, expect, it } from 'vitest'
import {
  courseHandicap9,
  courseHandicap9WithoutRatingMinusPar,
  courseHandicap18,
  courseHandicap18WithoutRatingMinusPar,
  courseHandicapSameNineTwice,
} from '#core/handicap/course-handicap.ts'
import { fraction, roundHalfUp } from '#core/values/fraction.ts'

const level = { courseRatingTenths: 720, slope: 113, par: 72 }
const level9 = { courseRatingTenths: 360, slope: 113, par: 36 }

describe('course handicap over 18 holes (Rules of Handicapping 6.1a, R&A and USGA, 2020 and 2024)', () => {
  it('is the Index where the slope is standard and rating equals par', () => {
    expect(courseHandicap18(123, level)).toEqual(fraction(123, 10))
  })

  it('adds rating minus par and keeps every digit', () => {
    expect(courseHandicap18(104, { courseRatingTenths: 715, slope: 128, par: 72 })).toEqual(fraction(12747, 1130))
  })

  it('rounds the half of a plus player upward where doubles would not', () => {
    const unrounded = courseHandicap18(-38, { courseRatingTenths: 703, slope: 113, par: 72 })
    expect(unrounded).toEqual(fraction(-11, 2))
    expect(roundHalfUp(unrounded)).toBe(-5)
  })
})

describe('course handicap over nine holes (Rules of Handicapping 6.1b, R&A and USGA, 2024)', () => {
  it('halves the Index exactly', () => {
    expect(courseHandicap9(49, level9, 'half-index-unrounded')).toEqual(fraction(49, 20))
  })

  it('takes the half to a tenth where the body does (Local Guidance to Rule 6, USGA, 2024)', () => {
    expect(courseHandicap9(49, level9, 'half-index-to-tenth')).toEqual(fraction(5, 2))
  })

  it('takes a plus half to a tenth upward (own reading)', () => {
    expect(courseHandicap9(-9, level9, 'half-index-to-tenth')).toEqual(fraction(-4, 10))
  })
})

describe('course handicap over the same nine twice (Rules of Handicapping 6.1, 2024; formula from memory)', () => {
  it('takes the whole Index, and rating and par of the nine twice', () => {
    const nine = { courseRatingTenths: 352, slope: 113, par: 36 }
    expect(courseHandicapSameNineTwice(150, nine)).toEqual(fraction(134, 10))
  })
})

describe('course handicap without rating minus par (Great Britain and Ireland until March 2024, second-hand)', () => {
  it('is Index x Slope / 113', () => {
    expect(courseHandicap18WithoutRatingMinusPar(113, 120)).toEqual(fraction(12))
    expect(courseHandicap18WithoutRatingMinusPar(-113, 120)).toEqual(fraction(-12))
  })

  it('is half the Index x Slope / 113 over nine holes (from memory), the half by either method', () => {
    expect(courseHandicap9WithoutRatingMinusPar(113, 120, 'half-index-unrounded')).toEqual(fraction(6))
    expect(courseHandicap9WithoutRatingMinusPar(113, 113, 'half-index-to-tenth')).toEqual(fraction(57, 10))
  })
})
