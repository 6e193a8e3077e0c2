import * as z from 'zod/mini'
import { sequence } from '#shared/atoms.ts'
import { feedPartSchema, feedSchema } from './feed.ts'
import { strangers } from './follow.ts'

/** Up: what a feed holds after a sequence; asked on a gap and for the rest of a long answer. */
export const pullSchema = z.strictObject({ feed: feedSchema, after: sequence })
export type Pull = z.infer<typeof pullSchema>

export const pulledSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('pulled'), part: feedPartSchema }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type Pulled = z.infer<typeof pulledSchema>
