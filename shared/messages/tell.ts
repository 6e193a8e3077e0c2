import * as z from 'zod/mini'
import { deviceId, sequence } from '#shared/atoms.ts'
import { limits } from '#shared/limits.ts'
import { feedSchema, storedOpSchema } from './feed.ts'

/** Down: new ops of a feed. `before` is the feed's last sequence before them: another one than the phone's is a gap. */
export const tellSchema = z.strictObject({
  feed: feedSchema,
  before: sequence,
  upTo: sequence,
  ops: z.array(storedOpSchema),
})
export type Tell = z.infer<typeof tellSchema>

/** Down, to the desk: ops that somebody carries beyond their own rights; pushing one's text takes it in. */
export const offeredSchema = z.strictObject({
  ops: z.array(z.strictObject({ text: z.string().check(z.maxLength(limits.opLength)), carrier: deviceId })),
})
export type Offered = z.infer<typeof offeredSchema>

/** Down: the server ends this link, and why. */
export const partingSchema = z.strictObject({
  why: z.enum(['restart', 'voided', 'deleted', 'another link', 'too slow']),
})
export type Parting = z.infer<typeof partingSchema>
