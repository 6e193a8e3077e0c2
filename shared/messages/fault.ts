import * as z from 'zod/mini'

/** The answer to a message that is none of ours; nothing changed. `path` names the field. */
export const faultSchema = z.strictObject({
  kind: z.literal('fault'),
  code: z.enum(['wrong shape', 'too large', 'not json', 'too many', 'internal']),
  path: z.string(),
})
export type WireFault = z.infer<typeof faultSchema>
