import * as z from 'zod/mini'
import { groupId, idOf, personName } from '#shared/atoms.ts'
import { strangers } from './follow.ts'
import { spokenSchema } from './words.ts'

/** Up: who asks to be let in where this phone may let them in. */
export const askersSchema = z.strictObject({})
export type AskAskers = z.infer<typeof askersSchema>

/** Somebody who has said three words, by the name they gave. */
export const askerSchema = z.strictObject({ asker: idOf<string>(), name: personName, group: z.nullable(groupId) })
export type Asker = z.infer<typeof askerSchema>

/** Its answer, with the words that stand: none of them outlives the server. */
export const askersAnswerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('askers'), spoken: z.array(spokenSchema), askers: z.array(askerSchema) }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type AskersAnswer = z.infer<typeof askersAnswerSchema>

/** Down: who asks has changed; the phone asks for the list. */
export const askedSchema = z.strictObject({})
export type Asked = z.infer<typeof askedSchema>
