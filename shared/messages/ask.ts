import * as z from 'zod/mini'
import { inviteId, logId, personName, secretText, wholeFrom } from '#shared/atoms.ts'

/** Up, by HTTP and from a phone that is in nowhere: the three words as they were typed, and who asks. */
export const askSchema = z.strictObject({ words: z.string().check(z.maxLength(80)), name: personName })
export type Ask = z.infer<typeof askSchema>

/** `ticket`: with it this phone alone asks what came of it. Wrong words and those of yesterday are the same to everybody. */
export const askedInSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('asking'), ticket: secretText, leftMs: wholeFrom(0, 600_000) }),
  z.strictObject({ kind: z.literal('not asking'), why: z.enum(['words unknown', 'too many', 'busy']) }),
])
export type AskedIn = z.infer<typeof askedInSchema>

/** Up: what has come of it. */
export const waitSchema = z.strictObject({ ticket: secretText })
export type Wait = z.infer<typeof waitSchema>

/** `gone`: too late, or the server has started again and knows of nothing. */
export const waitedSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('waiting') }),
  z.strictObject({
    kind: z.literal('let in'),
    log: logId,
    invite: z.strictObject({ id: inviteId, secret: secretText }),
  }),
  z.strictObject({ kind: z.literal('not let in'), why: z.enum(['not now', 'gone', 'busy']) }),
])
export type Waited = z.infer<typeof waitedSchema>
