import * as z from 'zod/mini'
import { deviceId, sequence, timeMs } from '#shared/atoms.ts'
import { limits } from '#shared/limits.ts'

/** `all`, or `g/<group>`: that group's ops and those of no scope. */
export const feedSchema = z.string().check(z.regex(/^(all|g\/[a-z0-9-]{1,32})$/))
export type Feed = string

/** An op as it comes down: its sequence in the log, its very text, the server's time, and who carried it if not its device. */
export const storedOpSchema = z.tuple([
  sequence,
  z.string().check(z.maxLength(limits.opLength)),
  timeMs,
  z.nullable(deviceId),
])
export type StoredOp = z.infer<typeof storedOpSchema>

/** Ops of a feed in order of sequence. The feed is complete up to `upTo` of the log once every part has come. */
export const feedPartSchema = z.strictObject({
  feed: feedSchema,
  upTo: sequence,
  ops: z.array(storedOpSchema).check(z.maxLength(limits.opsInAnswer)),
  /** True when more is there after `upTo`: ask again from it. */
  more: z.boolean(),
})
export type FeedPart = z.infer<typeof feedPartSchema>
