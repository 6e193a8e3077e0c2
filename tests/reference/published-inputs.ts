import * as z from 'zod/mini'
import { parseCalendarDay } from '#core/values/calendar-day.ts'
import { type Fraction, fraction, parseDecimal, times } from '#core/values/fraction.ts'

const largest = 999

/**
 * A number of the file as the decimal that was written, never as the double it became. A text may hold one too, but no
 * leading "+": in golf that would turn the sign round.
 */
export const decimal = z.pipe(
  z.union([z.number(), z.string().check(z.regex(/^-?\d/))]),
  z.transform((written, context): Fraction => {
    const value = parseDecimal(String(written))
    if (value !== null && Math.abs(value.numerator) <= largest * value.denominator) return value
    context.issues.push({ code: 'custom', input: written })
    return z.NEVER
  }),
)

/** A decimal with one place at most, in whole tenths. */
export const tenths = z.pipe(
  decimal,
  z.transform((value, context): number => {
    const { numerator, denominator } = times(value, fraction(10))
    if (denominator === 1) return numerator
    context.issues.push({ code: 'custom', input: value })
    return z.NEVER
  }),
)

export const whole = z.int().check(z.gte(-largest), z.lte(largest))

export const percent = z.int().check(z.gte(0), z.lte(100))

/** `null` is a hole without a score. */
export const score = z.nullable(z.int().check(z.gte(1), z.lte(largest)))

export const strokeIndexes = z.array(z.int().check(z.gte(1), z.lte(54))).check(z.minLength(1), z.maxLength(54))

/** One hole of one player. */
export const holeStrokes = z.object({ par: whole, strokes_received: whole, gross: score })

/** One player's round, every list in card order. */
export const roundScores = z
  .object({ par: z.array(whole), stroke_index: strokeIndexes, playing_handicap: whole, gross: z.array(score) })
  .check(z.refine(round => new Set([round.par.length, round.stroke_index.length, round.gross.length]).size === 1))
export type RoundScores = z.output<typeof roundScores>

/** Every key of a table of codes, as the words that the file may use. */
export const codeOf = <Code extends string>(
  codes: Readonly<Record<Code, unknown>>,
): z.ZodMiniEnum<Record<Code, Code>> =>
  z.enum(Object.fromEntries(Object.keys(codes).map(code => [code, code])) as Record<Code, Code>)

export const slope = z.int().check(z.gte(1), z.lte(largest))

export const playedOf18 = z.array(z.int().check(z.gte(-largest), z.lte(largest))).check(z.length(18))

/** Yards or metres. */
export const length = z.pipe(
  z.int().check(z.gte(0), z.lte(99_999)),
  z.transform((written): Fraction => fraction(written)),
)

/** A day, counted in whole days. */
export const calendarDay = z.pipe(
  z.string(),
  z.transform((written, context): number => {
    const day = parseCalendarDay(written)
    if (day !== null) return day
    context.issues.push({ code: 'custom', input: written })
    return z.NEVER
  }),
)

export const hole = z.int().check(z.gte(1), z.lte(18))
