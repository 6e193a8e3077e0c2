import type { Hello } from '#shared/messages/hello.ts'

export const questions = ['follow', 'pull', 'exchange', 'push', 'words', 'askers', 'admit', 'offers', 'delete'] as const
export type Question = (typeof questions)[number]

/** What a link reports; all of it as it came, unread. */
export interface LinkEvents {
  /** A server can be asked now; also said again by a link that only looks in now and then. */
  readonly up: () => void
  readonly down: () => void
  readonly told: (message: unknown) => void
  readonly offered: (message: unknown) => void
  /** Who asks to be let in has changed. */
  readonly asked: () => void
  readonly parting: (message: unknown) => void
}

/** One way to a server. It keeps nothing: what is not answered was perhaps never heard. */
export interface Link {
  /** Tries until it is stopped. `hello` is asked anew for every connection. */
  readonly start: (hello: () => Hello, events: LinkEvents) => void
  readonly stop: () => void
  /** Drops what there is and connects again at once. */
  readonly renew: () => void
  /** Rejects when there is no connection, when it ends first, and after the limit. */
  readonly ask: (question: Question, message: object, limitMs: number) => Promise<unknown>
  /** False for a link that is not told anything and has to look in. */
  readonly isTold: () => boolean
}
