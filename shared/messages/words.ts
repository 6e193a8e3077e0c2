import * as z from 'zod/mini'
import { groupId, wholeFrom } from '#shared/atoms.ts'
import { strangers } from './follow.ts'

/** Up: three words to say to a phone that is to be let in: as a scorer of a group, or null as a desk where all are. */
export const wordsSchema = z.strictObject({ group: z.nullable(groupId) })
export type AllotWords = z.infer<typeof wordsSchema>

/** Words that stand, and for how long; the server holds them in memory alone. */
export const spokenSchema = z.strictObject({
  group: z.nullable(groupId),
  words: z.array(z.string().check(z.regex(/^[a-z]{3,8}$/))).check(z.minLength(3), z.maxLength(3)),
  leftMs: wholeFrom(0, 600_000),
})
export type Spoken = z.infer<typeof spokenSchema>

/** `not yours`: this phone may let nobody in there. `busy`: too many words stand. */
export const allottedSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('words'), spoken: spokenSchema }),
  z.strictObject({ kind: z.literal('no words'), why: z.enum(['not yours', 'busy']) }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type Allotted = z.infer<typeof allottedSchema>
