import * as z from 'zod/mini'
import type { InviteId, LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { inviteId, logId, secretText } from './atoms.ts'
import { limits } from './limits.ts'
import { isTooDeep } from './op.ts'
import { proves } from './proof.ts'

/** An outing as one phone hands it to another with no signal: every op by its text, and the invite that lets it in. */
export interface HandOver {
  readonly sixThrees: 'hand-over'
  readonly version: 1
  readonly log: LogId
  /** Null where the phone that takes it may read alone. */
  readonly invite: { readonly id: InviteId; readonly secret: string } | null
  readonly ops: readonly string[]
}

export const handOverSchema = proves<HandOver>()(
  z.strictObject({
    sixThrees: z.literal('hand-over'),
    version: z.literal(1),
    log: logId,
    invite: z.nullable(z.strictObject({ id: inviteId, secret: secretText })),
    ops: z.array(z.string().check(z.maxLength(limits.opLength))),
  }),
)

export const handOverFaults = ['not a hand-over', 'newer version'] as const
export type HandOverFault = (typeof handOverFaults)[number]

/** Reads what was handed over; its ops are weighed one by one when they are taken in. */
export function parseHandOver(text: string): Result<HandOver, HandOverFault> {
  const value = jsonOf(text)
  const head = value as { readonly sixThrees?: unknown; readonly version?: unknown } | null
  if (typeof value !== 'object' || head?.sixThrees !== 'hand-over') return err('not a hand-over')
  if (head.version !== 1) return err('newer version')
  const parsed = handOverSchema.safeParse(value)
  return parsed.success ? ok(parsed.data as HandOver) : err('not a hand-over')
}

function jsonOf(text: string): unknown {
  if (isTooDeep(text, limits.opDepth)) return null
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    return null
  }
}
