import { ownCardOf } from '#core/outing/own-card.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { cardFileOf } from '#shared/card-file.ts'
import { limits } from '#shared/limits.ts'
import { cardMark, isCardLog } from './card-taken.ts'
import { inventions } from './inventions.ts'
import { outingStore } from './outing-store.ts'
import { resultsOn } from './use-results.ts'

const idLength = 32

/**
 * One ball's card of the open outing as text for its player's own phone, under this title; null while the course lacks a
 * hole. There is no invite in it: it is to be read, and lets nobody in.
 */
export function cardText(ball: BallId, title: string): string | null {
  const { log, outing, levels } = outingStore.getState()
  const card = outing && levels && ownCardOf(outing, resultsOn(levels), ball)
  if (!card || !log) return null
  return JSON.stringify(cardFileOf(cardId(log, ball), { ...card, title: title.slice(0, limits.titleLength).trim() }))
}

/** A kept card that is given on stays the card it is. */
const cardId = (log: LogId, ball: BallId): LogId =>
  isCardLog(log) ? log : (`${cardMark}${inventions.hash(`${log}/${ball}`)}`.slice(0, idLength) as LogId)
