import type { HoleScore } from '#core/card/score.ts'
import { formatDecimal } from '#core/values/decimal.ts'
import type { Fraction } from '#core/values/fraction.ts'
import { isolated } from './isolated.ts'
import { say } from './say.ts'

/** A score as people say it: "5", "picked up". */
export const formatScore = (score: HoleScore): string => (typeof score === 'number' ? String(score) : say(score))

/** Strokes over the line: "level", "+3", "−1"; what zero is called may be another line's name. */
export function formatOver(strokes: number, none: 'level' | 'on-target' = 'level'): string {
  if (strokes === 0) return say(none)
  return strokes > 0 ? say('over-n', { n: strokes }) : say('under-n', { n: -strokes })
}

/** A share of a prize or of strokes, exact and short: "4.5", and "2 5/6" where the decimals would not end. */
export function formatShare(value: Fraction): string {
  const { numerator, denominator } = value
  if (100 % denominator === 0) return formatDecimal(value)
  const [whole, rest] = [Math.trunc(numerator / denominator), Math.abs(numerator % denominator)]
  const part = `${rest}/${denominator}`
  if (whole === 0) return numerator < 0 ? `-${part}` : part
  return `${whole} ${part}`
}

/** "8th", as in "Rowan's 8th". */
export function formatOrdinal(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13
  const ending = teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')
  return `${n}${ending}`
}

const threes = ['first-three', 'second-three', 'third-three', 'fourth-three', 'fifth-three', 'sixth-three'] as const

/** "second three"; later ones by number. */
export function formatThree(number: number): string {
  const key = threes[number - 1]
  return key ? say(key) : `${formatOrdinal(number)} three`
}

/** "3, 7 and 9" without the last comma: "3, 7, 9". */
export const formatList = (items: readonly (string | number)[]): string =>
  items.map(item => isolated(String(item))).join(', ')

/** "Quillmoor · 16 May 2026", of what is there. */
export const formatDots = (items: readonly (string | number | false | null | undefined)[]): string =>
  items
    .filter(Boolean)
    .map(item => isolated(String(item)))
    .join(' · ')

/** Holes in the order given, runs of three and more drawn together: "2, 5 to 9". */
export function formatHoles(holes: readonly number[]): string {
  const runs: number[][] = []
  for (const hole of holes) {
    const run = runs.at(-1)
    if (run?.at(-1) === hole - 1) run.push(hole)
    else runs.push([hole])
  }
  return formatList(
    runs.map(run => (run.length > 2 ? say('run', { from: run[0] ?? 0, to: run.at(-1) ?? 0 }) : formatList(run))),
  )
}

/** A phone's clock as a time of day. */
export const formatTime = (at: number): string =>
  new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit' }).format(at)

let dayForm: Intl.DateTimeFormat | null = null

/** A day of the calendar, "2026-05-16", as it is written: "16 May 2026". */
export function formatDay(day: string): string {
  // Made when a day is first said: a slow phone takes a tenth of a second over it, and a hole names none.
  dayForm ??= new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' })
  return dayForm.format(Date.parse(day))
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
