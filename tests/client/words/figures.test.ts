import { describe, expect, test } from 'vitest'
import { formatShare } from '#client/words/figures.ts'
import { fraction } from '#core/values/fraction.ts'

describe('a share as people read it', () => {
  test.each([
    [fraction(3), '3'],
    [fraction(9, 2), '4.5'],
    [fraction(-9, 4), '-2.25'],
    [fraction(17, 6), '2 5/6'],
    [fraction(-17, 6), '-2 5/6'],
    [fraction(1, 3), '1/3'],
    [fraction(-1, 3), '-1/3'],
    [fraction(1413, 18), '78.5'],
  ])('%o is %s', (value, text) => {
    expect(formatShare(value)).toBe(text)
  })
})
