import * as z from 'zod/mini'
import type { Snapshot } from '#core/log/snapshot.ts'
import { deviceId, eraText, opIdSchema, ranges, sequence, timeMs } from '../atoms.ts'
import { jsonSchema } from '../facts.ts'
import { limits } from '../limits.ts'
import { proves } from '../proof.ts'
import { strangers } from './follow.ts'

/** A log's state in columns; tolerant of keys and values that are newer than this version. */
export const snapshotSchema = proves<Snapshot>()(
  z.strictObject({
    keys: z.array(z.string().check(z.maxLength(limits.keyLength))),
    values: z.array(jsonSchema),
    ops: z.array(opIdSchema),
    ticks: z.array(z.int()),
    ats: z.array(timeMs),
    buried: z.array(z.tuple([opIdSchema, z.array(z.string())])),
    here: z.array(z.tuple([deviceId, ranges])),
    tick: z.int(),
  }),
)

/** Down, by HTTP: the log up to a sequence of this era; the phone follows the feed from there. */
export const snapshotAnswerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('snapshot'), era: eraText, upTo: sequence, snapshot: snapshotSchema }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type SnapshotAnswer = z.infer<typeof snapshotAnswerSchema>
