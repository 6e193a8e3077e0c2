import { expect, it } from 'vitest'
import { formatDecimal } from '#core/values/decimal.ts'
import { fraction } from '#core/values/fraction.ts'

it.each([
  [14, 1, '14'],
  [0, 1, '0'],
  [-13, 20, '-0.65'],
  [1413, 113, '12.504425'],
  [1, 3, '0.333333'],
  [2, 3, '0.666667'],
  [-2, 3, '-0.666667'],
  [1, 1_000_000, '0.000001'],
])('%i/%i is %s', (numerator, denominator, text) => {
  expect(formatDecimal(fraction(numerator, denominator))).toBe(text)
})
