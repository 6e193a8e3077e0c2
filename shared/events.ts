import type { Admit, Admitted } from '#shared/messages/admit.ts'
import type { AskAskers, Asked, AskersAnswer } from '#shared/messages/askers.ts'
import type { Delete, Deleted } from '#shared/messages/delete.ts'
import type { Exchange, Exchanged } from '#shared/messages/exchange.ts'
import type { WireFault } from '#shared/messages/fault.ts'
import type { Follow, Followed } from '#shared/messages/follow.ts'
import type { AskOffers, OffersAnswer } from '#shared/messages/offers.ts'
import type { Pull, Pulled } from '#shared/messages/pull.ts'
import type { Push, Pushed } from '#shared/messages/push.ts'
import type { Offered, Parting, Tell } from '#shared/messages/tell.ts'
import type { Allotted, AllotWords } from '#shared/messages/words.ts'

type Answer<T> = (answer: T | WireFault) => void

/** What a phone says over a socket; every message is answered once. */
export interface UpEvents {
  follow(message: Follow, answer: Answer<Followed>): void
  pull(message: Pull, answer: Answer<Pulled>): void
  exchange(message: Exchange, answer: Answer<Exchanged>): void
  push(message: Push, answer: Answer<Pushed>): void
  words(message: AllotWords, answer: Answer<Allotted>): void
  askers(message: AskAskers, answer: Answer<AskersAnswer>): void
  admit(message: Admit, answer: Answer<Admitted>): void
  offers(message: AskOffers, answer: Answer<OffersAnswer>): void
  delete(message: Delete, answer: Answer<Deleted>): void
}

/** What a server says unasked. */
export interface DownEvents {
  tell(message: Tell): void
  offered(message: Offered): void
  asked(message: Asked): void
  parting(message: Parting): void
}
