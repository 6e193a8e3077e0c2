import { expect, it } from 'vitest'
import * as z from 'zod/mini'
import { proves } from '#shared/proof.ts'

// The assertions of this file are the compiler's: an unused `@ts-expect-error` fails the type check.

it('accepts a schema that says exactly what the type says', () => {
  const schema = proves<{ readonly a: number; readonly b: readonly ('x' | 'y')[] }>()(
    z.strictObject({ a: z.number(), b: z.array(z.enum(['x', 'y'])) }),
  )
  expect(schema.safeParse({ a: 1, b: ['x'] }).success).toBe(true)
})

it('does not compile where schema and type differ', () => {
  const refused = [
    // @ts-expect-error another type
    () => proves<{ readonly a: number }>()(z.strictObject({ a: z.string() })),
    // @ts-expect-error a missing field
    () => proves<{ readonly a: number; readonly b: null }>()(z.strictObject({ a: z.number() })),
    // @ts-expect-error a field too many
    () => proves<{ readonly a: number }>()(z.strictObject({ a: z.number(), b: z.number() })),
    // @ts-expect-error a word too many
    () => proves<'a' | 'b'>()(z.enum(['a', 'b', 'c'])),
    // @ts-expect-error a word too few
    () => proves<'a' | 'b' | 'c'>()(z.enum(['a', 'b'])),
  ]
  expect(refused).toHaveLength(5)
})
