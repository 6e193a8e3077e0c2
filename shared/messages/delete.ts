import * as z from 'zod/mini'
import { strangers } from './follow.ts'

/** Up: deletes the log from the server for good; the desk's and the owner's alone. */
export const deleteSchema = z.strictObject({})
export type Delete = z.infer<typeof deleteSchema>

/** Its answer. From then on the log is `deleted` for everybody; phones keep what they hold. */
export const deletedSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('deleted') }),
  z.strictObject({ kind: z.literal('not deleted'), why: z.enum(['not yours']) }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type Deleted = z.infer<typeof deletedSchema>
