import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  compareFractions,
  fraction,
  minus,
  parseDecimal,
  percentOf,
  plus,
  roundHalfUp,
  roundTo,
  times,
  toNumber,
  zero,
} from '#core/values/fraction.ts'

const anyFraction = fc
  .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 10_000 }))
  .map(([numerator, denominator]) => fraction(numerator, denominator))
const anyWhole = fc.integer({ min: -10_000, max: 10_000 })

describe('fractions', () => {
  it('are kept in lowest terms with the sign above', () => {
    expect(fraction(6, -4)).toEqual({ numerator: -3, denominator: 2 })
    expect(Object.is(fraction(0, -5).numerator, 0)).toBe(true)
  })

  it('refuse to leave the safe integers, or to stand over zero', () => {
    expect(() => fraction(2 ** 53)).toThrow('safe integer')
    expect(() => times(fraction(2 ** 52), fraction(4))).toThrow('safe integer')
    expect(() => fraction(1, 0)).toThrow('over zero')
  })

  it('add and subtract back to where they were', () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, (a, b) => {
        expect(minus(plus(a, b), b)).toEqual(a)
      }),
    )
  })

  it('are ordered as the numbers are', () => {
    fc.assert(
      fc.property(anyFraction, anyFraction, (a, b) => {
        expect(Math.sign(compareFractions(a, b))).toBe(Math.sign(minus(a, b).numerator))
      }),
    )
    expect(compareFractions(fraction(1, 3), fraction(1, 2))).toBeLessThan(0)
  })

  it('give a percentage exactly', () => {
    expect(percentOf(fraction(20), 95)).toEqual(fraction(19))
    expect(percentOf(fraction(-1, 2), 85)).toEqual(fraction(-17, 40))
  })
})

describe('rounding half upward (Rules of Handicapping 6.1 and Appendix C, R&A and USGA, 2024)', () => {
  it.each([
    [5, 2, 3],
    [19, 2, 10],
    [-1, 2, 0],
    [-3, 2, -1],
    [-19, 2, -9],
    [-8, 5, -2],
    [12, 5, 2],
  ])('%i/%i is %i', (numerator, denominator, rounded) => {
    expect(Object.is(roundHalfUp(fraction(numerator, denominator)), rounded)).toBe(true)
  })

  it('sends every half upward, of plus and ordinary players alike', () => {
    fc.assert(
      fc.property(anyWhole, whole => {
        expect(roundHalfUp(fraction(2 * whole + 1, 2))).toBe(whole + 1)
      }),
    )
  })

  it('stays within half of the value, the upper half included', () => {
    fc.assert(
      fc.property(anyFraction, value => {
        const error = minus(fraction(roundHalfUp(value)), value)
        expect(compareFractions(error, fraction(1, 2))).toBeLessThanOrEqual(0)
        expect(compareFractions(error, fraction(-1, 2))).toBeGreaterThan(0)
      }),
    )
  })

  it('moves with whole strokes', () => {
    fc.assert(
      fc.property(anyFraction, anyWhole, (value, whole) => {
        expect(roundHalfUp(plus(value, fraction(whole)))).toBe(roundHalfUp(value) + whole)
      }),
    )
  })

  it('rounds to tenths in whole tenths', () => {
    expect(roundTo(fraction(-31, 20), 10)).toBe(-15)
    expect(roundTo(fraction(87, 20), 10)).toBe(44)
  })
})

describe('a decimal written by a person', () => {
  it.each([
    ['71.4', fraction(714, 10)],
    ['-0.5', fraction(-1, 2)],
    ['+2', fraction(2)],
    ['0', zero],
  ])('%s is read exactly', (text, value) => {
    expect(parseDecimal(text)).toEqual(value)
  })

  it.each(['', '.5', '5.', '1e3', '1,5', ' 1', '1.2.3', 'NaN', '1234567890'])('"%s" is none', text => {
    expect(parseDecimal(text)).toBeNull()
  })

  it('comes back from the shortest text of its double', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.constantFrom(1, 10, 100, 1000),
        (whole, scale) => {
          expect(parseDecimal(String(toNumber(fraction(whole, scale))))).toEqual(fraction(whole, scale))
        },
      ),
    )
  })
})
