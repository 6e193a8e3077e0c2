import * as z from 'zod/mini'
import { eraText, hereSchema } from '#shared/atoms.ts'
import { feedPartSchema, feedSchema } from './feed.ts'
import { strangers } from './follow.ts'

/** Up, where eras differ: which n of which device the phone holds of a feed. */
export const exchangeSchema = z.strictObject({ feed: feedSchema, here: hereSchema })
export type Exchange = z.infer<typeof exchangeSchema>

/** What the phone lacks of the feed, and what the server holds of it: the phone then pushes what the server lacks. */
export const exchangedSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('exchanged'), era: eraText, part: feedPartSchema, here: hereSchema }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type Exchanged = z.infer<typeof exchangedSchema>
