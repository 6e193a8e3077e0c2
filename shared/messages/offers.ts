import * as z from 'zod/mini'
import { strangers } from './follow.ts'
import { offeredSchema } from './tell.ts'

/** Up: what waits for the desk; a phone that is told nothing asks. */
export const offersSchema = z.strictObject({})
export type AskOffers = z.infer<typeof offersSchema>

/** Its answer: nothing for a phone that is no desk; when there is much, the rest once these are taken in. */
export const offersAnswerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('offers'), ops: offeredSchema.shape.ops }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type OffersAnswer = z.infer<typeof offersAnswerSchema>
