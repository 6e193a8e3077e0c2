import type { LogId } from '#core/values/ids.ts'

/** What the one act of a kept card is called. */
export const cardTaken = 'card taken home'

/** No id that a phone draws has a hyphen. */
export const cardMark = 'card-'

/** True for a card that was taken home: it is here to be read, and no server is asked about it. */
export const isCardLog = (log: LogId | null): boolean => log?.startsWith(cardMark) ?? false
