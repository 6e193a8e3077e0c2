import { type Fraction, parseDecimal, roundTo } from '#core/values/fraction.ts'

/** An exact figure that a check value prints to so many decimal places. */
export class Decimal {
  readonly value: Fraction
  readonly places: number

  constructor(value: Fraction, places: number) {
    this.value = value
    this.places = places
  }
}

/** What a calculation gives: codes and whole numbers as they are, figures with a fraction as `Decimal`. */
export type Answer = string | number | boolean | null | Decimal | readonly Answer[] | { readonly [key: string]: Answer }

/** The answer as it stands in a check value, for showing beside what was expected. */
export function printAnswer(answer: Answer): unknown {
  if (answer instanceof Decimal) return roundTo(answer.value, 10 ** answer.places) / 10 ** answer.places
  if (Array.isArray(answer)) return answer.map(printAnswer)
  if (typeof answer !== 'object' || answer === null) return answer
  return Object.fromEntries(Object.entries(answer).map(([key, value]) => [key, printAnswer(value)]))
}

/**
 * Whether an answer is the expected one. Decimals agree after rounding to their places, everything else exactly. Of a
 * record only the expected keys are compared, so that a check value may print fewer.
 */
export function isExpected(answer: Answer | undefined, expected: unknown): boolean {
  if (answer instanceof Decimal) return isSameDecimal(answer, expected)
  if (Array.isArray(answer)) {
    return (
      isList(expected) &&
      expected.length === answer.length &&
      answer.every((each, at) => isExpected(each, expected[at]))
    )
  }
  if (typeof answer !== 'object' || answer === null) return answer === expected
  return (
    isRecord(expected) && Object.entries(expected).every(([key, value]) => isExpected(ownValue(answer, key), value))
  )
}

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

export const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value)

const ownValue = (record: object, key: string): Answer | undefined =>
  Object.hasOwn(record, key) ? (record as Record<string, Answer>)[key] : undefined

function isSameDecimal({ value, places }: Decimal, expected: unknown): boolean {
  if (typeof expected !== 'number') return false
  const printed = parseDecimal(expected.toFixed(places))
  return printed !== null && roundTo(value, 10 ** places) === roundTo(printed, 10 ** places)
}
