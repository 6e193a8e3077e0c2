import * as z from 'zod/mini'
import { sequence } from '#shared/atoms.ts'

/** Why an op will never be stored for this sender. Final. */
export const refusals = [
  'not json',
  'too large',
  'wrong shape',
  'not canonical',
  'wrong value',
  'no facts',
  'key twice',
  'key outside the scope',
  'other log',
  /** Same identity, other content: an old copy of a phone's storage came back. */
  'identity taken',
  'forbidden',
  'key taken',
  'voided',
  'deleted',
] as const
export type Refusal = (typeof refusals)[number]

/** Why an op waits: nothing is wrong with it. */
export const delays = ['busy', 'disk', 'database', 'newer', 'key unknown', 'desk'] as const
export type Delay = (typeof delays)[number]

/** What became of one op. Every op sent gets exactly one. */
export const verdictSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('stored'), seq: sequence }),
  z.strictObject({ kind: z.literal('already stored'), seq: sequence }),
  z.strictObject({ kind: z.literal('refused'), code: z.enum(refusals), path: z.string() }),
  z.strictObject({ kind: z.literal('later'), reason: z.enum(delays) }),
])

export type Verdict = z.infer<typeof verdictSchema>
