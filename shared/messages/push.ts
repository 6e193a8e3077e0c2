import * as z from 'zod/mini'
import { limits } from '#shared/limits.ts'
import { verdictSchema } from './verdict.ts'

/** Up: ops as their texts, the phone's own in order; others' are carried. */
export const pushSchema = z.strictObject({
  ops: z.array(z.string().check(z.maxLength(limits.opLength))).check(z.minLength(1), z.maxLength(limits.opsInPush)),
})
export type Push = z.infer<typeof pushSchema>

/** One verdict an op, in the same order. */
export const pushedSchema = z.strictObject({ verdicts: z.array(verdictSchema) })
export type Pushed = z.infer<typeof pushedSchema>
