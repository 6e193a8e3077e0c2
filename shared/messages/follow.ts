import * as z from 'zod/mini'
import { roles } from '#core/outing/facts.ts'
import { eraText, groupId, sequence } from '#shared/atoms.ts'
import { limits } from '#shared/limits.ts'
import { feedPartSchema, feedSchema } from './feed.ts'

/** Up: the feeds a phone wants from here on, with the last sequence it holds of each, in the era it knows. */
export const followSchema = z.strictObject({
  era: z.nullable(eraText),
  feeds: z
    .array(z.strictObject({ feed: feedSchema, after: sequence }))
    .check(z.minLength(1), z.maxLength(limits.feedsInFollow)),
})
export type Follow = z.infer<typeof followSchema>

/** Why a server gives nothing of a log: it holds none, knows neither key nor invite, or the key was voided. */
export const strangers = ['log unknown', 'key unknown', 'voided', 'deleted', 'protocol too old', 'busy'] as const
export type Stranger = (typeof strangers)[number]

/** Its answer. In another era than the phone's the parts are empty and the phone exchanges instead. */
export const followedSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('followed'),
    era: eraText,
    role: z.enum(roles),
    group: z.nullable(groupId),
    sameEra: z.boolean(),
    parts: z.array(feedPartSchema),
  }),
  z.strictObject({ kind: z.literal('stranger'), why: z.enum(strangers) }),
])
export type Followed = z.infer<typeof followedSchema>
