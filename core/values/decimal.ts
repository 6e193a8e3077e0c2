import { type Fraction, roundTo } from './fraction.ts'

const places = 6

/** The exact value as decimal text, at most six places, a half upward: 1413/113 is "12.504425", 14 is "14". */
export function formatDecimal(value: Fraction): string {
  const millionths = roundTo(value, 10 ** places)
  const digits = String(Math.abs(millionths)).padStart(places + 1, '0')
  const decimals = digits.slice(-places).replace(/0+$/, '')
  const sign = millionths < 0 ? '-' : ''
  return `${sign}${digits.slice(0, -places)}${decimals === '' ? '' : `.${decimals}`}`
}
