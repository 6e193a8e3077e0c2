import { fraction, parseDecimal, times } from '#core/values/fraction.ts'

/** Whole tenths of a decimal as a person writes it, 71.4 or "12.4"; null when it is finer than a tenth. */
export function parseTenths(written: number | string): number | null {
  const value = parseDecimal(String(written))
  const tenths = value && times(value, fraction(10))
  return tenths?.denominator === 1 ? tenths.numerator : null
}

/** A Handicap Index in tenths; a plus, which is how a plus player's is written, makes it negative. */
export function parseIndexTenths(written: number | string): number | null {
  const tenths = parseTenths(written)
  return tenths !== null && String(written).startsWith('+') ? 0 - tenths : tenths
}

/** 714 is "71.4", -13 is "-1.3". */
export function formatTenths(tenths: number): string {
  const size = Math.abs(tenths)
  return `${tenths < 0 ? '-' : ''}${(size - (size % 10)) / 10}.${size % 10}`
}

/** As a Handicap Index is written: 124 is "12.4", -13 is "+1.3". */
export const formatIndex = (tenths: number): string => (tenths < 0 ? `+${formatTenths(-tenths)}` : formatTenths(tenths))
