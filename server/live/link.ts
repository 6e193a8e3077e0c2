import type { Asked } from '#shared/messages/askers.ts'
import type { Offered, Parting, Tell } from '#shared/messages/tell.ts'
import type { Shown } from '../access/shown.ts'

/** A phone that listens. Nothing here waits for it: what it cannot take, it catches up with later. */
export interface Link {
  readonly shown: Shown
  tell(message: Tell): void
  offered(message: Offered): void
  asked(message: Asked): void
  /** Says why, and ends. */
  part(why: Parting['why']): void
}

/** Sends one message to many; a transport that can encode it once brings its own. */
export type TellMany = (links: readonly Link[], message: Tell) => void

export const tellEach: TellMany = (links, message) => {
  for (const link of links) link.tell(message)
}
