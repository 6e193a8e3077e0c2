import { assert } from './assert.ts'

/**
 * An exact rational number in lowest terms, denominator positive.
 * Handicap sums stay far inside the safe integers; leaving them is a bug and throws.
 */
export interface Fraction {
  readonly numerator: number
  readonly denominator: number
}

function greatestCommonDivisor(a: number, b: number): number {
  let [x, y] = [Math.abs(a), Math.abs(b)]
  while (y !== 0) [x, y] = [y, x % y]
  return x
}

/** `numerator / denominator`, reduced. Throws outside the safe integers or over zero. */
export function fraction(numerator: number, denominator = 1): Fraction {
  assert(Number.isSafeInteger(numerator) && Number.isSafeInteger(denominator), 'fraction: not a safe integer')
  assert(denominator !== 0, 'fraction: over zero')
  const divisor = greatestCommonDivisor(numerator, denominator) || 1
  const sign = denominator < 0 ? -1 : 1
  // Adding 0 turns -0 into 0.
  return { numerator: (sign * numerator) / divisor + 0, denominator: (sign * denominator) / divisor }
}

export const zero: Fraction = fraction(0)

export const plus = (a: Fraction, b: Fraction): Fraction =>
  fraction(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator)

export const minus = (a: Fraction, b: Fraction): Fraction =>
  fraction(a.numerator * b.denominator - b.numerator * a.denominator, a.denominator * b.denominator)

export const times = (a: Fraction, b: Fraction): Fraction =>
  fraction(a.numerator * b.numerator, a.denominator * b.denominator)

/** Negative, zero or positive as `a` is less than, equal to or more than `b`. */
export const compareFractions = (a: Fraction, b: Fraction): number =>
  a.numerator * b.denominator - b.numerator * a.denominator

/** `percent` of the value: 95 of 20 is 19. */
export const percentOf = (value: Fraction, percent: number): Fraction => times(value, fraction(percent, 100))

/**
 * The nearest whole number, a half going upward for plus and ordinary players alike: floor(x + 1/2).
 * Source: Rules of Handicapping 2024, rule 6.1 and Appendix C; 2.5 gives 3, -0.5 gives 0, -1.5 gives -1.
 */
export const roundHalfUp = ({ numerator, denominator }: Fraction): number =>
  floorDivide(2 * numerator + denominator, 2 * denominator)

/** Whole-number division that never passes through an inexact quotient. `b` is positive. */
function floorDivide(a: number, b: number): number {
  const remainder = ((a % b) + b) % b
  // Adding 0 turns -0 into 0.
  return (a - remainder) / b + 0
}

/** The value in units of 1/`scale`, a half going upward: `roundTo(x, 10)` is whole tenths. */
export const roundTo = (value: Fraction, scale: number): number => roundHalfUp(times(value, fraction(scale)))

/** For showing only: never computed with again. */
export const toNumber = ({ numerator, denominator }: Fraction): number => numerator / denominator

/** A decimal written by a person, exactly: "71.4" is 714/10. Null when it is not a plain decimal. */
export function parseDecimal(text: string): Fraction | null {
  const match = /^([+-]?)(\d{1,9})(?:\.(\d{1,6}))?$/.exec(text)
  if (!match) return null
  const [, sign = '', whole = '0', decimals = ''] = match
  const size = fraction(Number(whole + decimals), 10 ** decimals.length)
  return sign === '-' ? minus(zero, size) : size
}
