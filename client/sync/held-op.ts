import type { Op } from '#core/log/op.ts'
import type { DeviceId } from '#core/values/ids.ts'
import type { Delay, Refusal } from '#shared/messages/verdict.ts'

/**
 * Where an op of this phone's stands on its way up:
 * `none` it is on the server, or nobody here has to send it; `waiting` it is to be sent; `later` the server put it off
 * and it is sent again on the next link; `refused` it will never be stored for this phone.
 */
export type Mark =
  | { readonly kind: 'none' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'later'; readonly reason: Delay }
  | { readonly kind: 'refused'; readonly code: Refusal; readonly path: string }

/** An op as this phone holds it. */
export interface HeldOp {
  readonly op: Op
  /** The very text that is stored and passed on. */
  readonly text: string
  /** Its sequence in the log, in the era in which the server last named it; null when no server has it. */
  readonly seq: number | null
  /** The server's time, milliseconds since 1970; null until it came down. */
  readonly serverAt: number | null
  /** Who brought it, if not its own device. */
  readonly carrier: DeviceId | null
  readonly mark: Mark
  /** Where it stands among the ops held here: ops are sent in this order. */
  readonly place: number
}

export const noMark: Mark = { kind: 'none' }
export const waitingMark: Mark = { kind: 'waiting' }
