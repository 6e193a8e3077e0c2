import * as z from 'zod/mini'
import { deviceId, eraText, groupId, hereSchema, sequence, timeMs } from '#shared/atoms.ts'
import { strangers } from '#shared/messages/follow.ts'
import { delays, refusals } from '#shared/messages/verdict.ts'

/*
 * What comes down, read tolerantly: members that a newer server adds are passed over, and a word that this version
 * does not know becomes the nearest one that loses nothing.
 */

const storedOp = z.tuple([sequence, z.string(), timeMs, z.nullable(deviceId)], z.unknown())
const part = z.object({ feed: z.string(), upTo: sequence, ops: z.array(storedOp), more: z.boolean() })
const stranger = z.object({ kind: z.literal('stranger'), why: z.catch(z.enum(strangers), 'busy') })
const fault = z.object({ kind: z.literal('fault'), code: z.string(), path: z.catch(z.string(), '') })

export const followedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('followed'), era: eraText, sameEra: z.boolean(), parts: z.array(part) }),
  stranger,
  fault,
])
export const pulledAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('pulled'), part }),
  stranger,
  fault,
])
export const exchangedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('exchanged'), era: eraText, part, here: hereSchema }),
  stranger,
  fault,
])

const spoken = z.object({ group: z.nullable(groupId), words: z.array(z.string()), leftMs: z.number() })
const asker = z.object({ asker: z.string(), name: z.string(), group: z.nullable(groupId) })

export const askersAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('askers'), spoken: z.array(spoken), askers: z.array(asker) }),
  stranger,
  fault,
])
export const allottedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('words'), spoken }),
  z.object({ kind: z.literal('no words'), why: z.catch(z.enum(['not yours', 'busy']), 'busy') }),
  stranger,
  fault,
])
export const admittedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('admitted') }),
  z.object({
    kind: z.literal('not admitted'),
    why: z.catch(z.enum(['gone', 'invite unknown', 'not yours']), 'gone'),
  }),
  stranger,
  fault,
])

export const deletedAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('deleted') }),
  z.object({ kind: z.literal('not deleted'), why: z.string() }),
  stranger,
  fault,
])

const knownVerdict = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('stored'), seq: sequence }),
  z.object({ kind: z.literal('already stored'), seq: sequence }),
  z.object({ kind: z.literal('refused'), code: z.enum(refusals), path: z.catch(z.string(), '') }),
  z.object({ kind: z.literal('later'), reason: z.catch(z.enum(delays), 'newer') }),
])
/** A verdict that this version cannot read ends nothing: the op is put off. */
export const pushedAnswer = z.object({ verdicts: z.array(z.catch(knownVerdict, { kind: 'later', reason: 'newer' })) })

export const tellMessage = z.object({ feed: z.string(), before: sequence, upTo: sequence, ops: z.array(storedOp) })
export const offeredMessage = z.object({ ops: z.array(z.object({ text: z.string(), carrier: deviceId })) })
export const offersAnswer = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('offers'), ops: offeredMessage.shape.ops }),
  stranger,
  fault,
])
export const partingMessage = z.object({ why: z.string() })

export type DownOp = z.infer<typeof storedOp>
export type DownPart = z.infer<typeof part>
export type DownVerdict = z.infer<typeof knownVerdict>
export type Tell = z.infer<typeof tellMessage>
