import type { Exchange, Exchanged } from './messages/exchange.ts'
import type { WireFault } from './messages/fault.ts'
import type { Follow, Followed } from './messages/follow.ts'
import type { Pull, Pulled } from './messages/pull.ts'
import type { Push, Pushed } from './messages/push.ts'
import type { Offered, Parting, Tell } from './messages/tell.ts'

type Answer<T> = (answer: T | WireFault) => void

/** What a phone says over a socket; every message is answered once. */
export interface UpEvents {
  follow(message: Follow, answer: Answer<Followed>): void
  pull(message: Pull, answer: Answer<Pulled>): void
  exchange(message: Exchange, answer: Answer<Exchanged>): void
  push(message: Push, answer: Answer<Pushed>): void
}

/** What a server says unasked. */
export interface DownEvents {
  tell(message: Tell): void
  offered(message: Offered): void
  parting(message: Parting): void
}
