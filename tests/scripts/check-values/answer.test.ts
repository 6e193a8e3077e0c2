import { describe, expect, it } from 'vitest'
import { fraction } from '#core/values/fraction.ts'
import { Decimal, isExpected, printAnswer } from '#scripts/check-values/answer.ts'

const third = new Decimal(fraction(-1, 3), 6)

describe('an answer', () => {
  it('agrees with a decimal printed to its places', () => {
    expect(isExpected(third, -0.333333)).toBe(true)
    expect(isExpected(third, -0.333334)).toBe(false)
    expect(isExpected(third, '-0.333333')).toBe(false)
    expect(isExpected(new Decimal(fraction(2437, 113), 4), 21.5664)).toBe(true)
  })

  it('does not take a decimal for the whole number next to it', () => {
    expect(isExpected(new Decimal(fraction(185, 10), 6), 19)).toBe(false)
    expect(isExpected(new Decimal(fraction(18), 6), 18.0)).toBe(true)
  })

  it('agrees with everything else exactly', () => {
    expect(isExpected(4, 4)).toBe(true)
    expect(isExpected(4, 4.000001)).toBe(false)
    expect(isExpected(0, null)).toBe(false)
    expect(isExpected(0, false)).toBe(false)
    expect(isExpected('A', 'B')).toBe(false)
    expect(isExpected(undefined, null)).toBe(false)
  })

  it('compares lists place by place', () => {
    expect(isExpected([1, 0], [1, 0])).toBe(true)
    expect(isExpected([1, 0], [0, 1])).toBe(false)
    expect(isExpected([1, 0], [1])).toBe(false)
    expect(isExpected([1], { 0: 1 })).toBe(false)
  })

  it('compares the expected keys of a record alone, and misses one that it does not have', () => {
    expect(isExpected({ a: 1, b: { c: null } }, { b: { c: null } })).toBe(true)
    expect(isExpected({ a: 1 }, { a: 1, b: null })).toBe(false)
    expect(isExpected({ a: 1 }, { toString: null })).toBe(false)
    expect(isExpected({ a: 1 }, [1])).toBe(false)
  })

  it('prints decimals to their places', () => {
    expect(printAnswer({ list: [third, 'A'], none: null })).toEqual({ list: [-0.333333, 'A'], none: null })
  })
})
