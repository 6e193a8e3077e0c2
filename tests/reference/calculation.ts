import * as z from 'zod/mini'
import type { Fraction } from '#core/values/fraction.ts'
import { err, type Fault, ok, type Result } from '#core/values/result.ts'
import { type Answer, Decimal } from '#scripts/check-values/answer.ts'

export type InputFault = 'wrong-input'

/** From the input of a check value, and nothing else of it, to the answer in the file's own words. */
export type Calculation = (input: unknown) => Result<Answer, Fault<InputFault>>

/** A calculation made of how its input reads and how core answers it. */
export function calculation<Schema extends z.ZodMiniType>(
  schema: Schema,
  answer: (input: z.output<Schema>) => Answer,
): Calculation {
  return input => {
    const parsed = z.safeParse(schema, input)
    return parsed.success ? ok(answer(parsed.data)) : err({ path: pathOf(parsed.error.issues), code: 'wrong-input' })
  }
}

const pathOf = (issues: readonly { readonly path: readonly PropertyKey[] }[]): string =>
  (issues[0]?.path ?? []).map(part => (typeof part === 'number' ? `[${part}]` : `.${String(part)}`)).join('')

const unroundedPlaces = 6
const measuredPlaces = 4

/** A figure before rounding; the file prints it to at most six places. */
export const unrounded = (value: Fraction): Answer => new Decimal(value, unroundedPlaces)

/** A length, a slope or a share of a handicap; the file prints it to at most four places. */
export const measured = (value: Fraction): Answer => new Decimal(value, measuredPlaces)

/** Whole tenths as the decimal the file prints, compared exactly. */
export const inTenths = (tenths: number): number => tenths / 10

/** The calculations of one part of the file, by the names it gives them. */
export type Calculations = readonly (readonly [string, Calculation])[]
