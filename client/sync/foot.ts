import type { Op } from '#core/log/op.ts'
import type { DeviceId } from '#core/values/ids.ts'
import type { Stranger } from '#shared/messages/follow.ts'
import type { Delay, Refusal } from '#shared/messages/verdict.ts'
import type { AtTheDoor, SpokenWords } from './at-the-door.ts'

/** What the words at the foot of every screen say; true at every moment. */
export interface Foot {
  /**
   * `saved` only when every op shown is on the disk of this phone; `elsewhere` nothing can be written here, for the disk
   * fails and another page of this phone holds what it lacks.
   */
  readonly phone: 'saved' | 'saving' | 'failing' | 'elsewhere'
  /** Ops shown here that no server is known to have, those put off included. */
  readonly waiting: number
  /** Those of them that the server put off, and why. */
  readonly putOff: readonly { readonly reason: Delay; readonly count: number }[]
  readonly refused: readonly { readonly op: Op; readonly code: Refusal; readonly path: string }[]
  /** For the desk: ops that somebody carries beyond their own rights. */
  readonly offered: readonly { readonly text: string; readonly op: Op; readonly carrier: DeviceId }[]
  /** Who asks to be let in where this phone may let them in, and the words that stand for it. */
  readonly askers: readonly AtTheDoor[]
  readonly spoken: readonly SpokenWords[]
  readonly link: LinkWord
  readonly stranger: Stranger | null
  /** A service worker can hold the app: it starts again with no signal. */
  readonly canSleep: boolean
}

/** `live` the server answered on this link; `away` nothing is tried; `stranger` it answered that it gives us nothing. */
export type LinkWord = 'live' | 'connecting' | 'away' | 'stranger'

export const emptyFoot: Foot = {
  phone: 'saved',
  waiting: 0,
  putOff: [],
  refused: [],
  offered: [],
  askers: [],
  spoken: [],
  link: 'away',
  stranger: null,
  canSleep: false,
}
