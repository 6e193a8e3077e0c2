import { unreachable } from '#core/values/assert.ts'

/** The hole in play when a partner of a four-ball side arrives. */
export interface LateArrival {
  /** Its place in the order of play, from 1. */
  readonly place: number
  readonly partnerHasStarted: boolean
  /** Anybody in the match, the partner among them. */
  readonly anyoneHasStarted: boolean
}

/**
 * The first hole, by its place in the order of play, on which a late partner may play: between holes, so before the other
 * partner starts the hole in stroke play, before anybody in the match does in match play.
 * Source: Rules of Golf, rule 23.4; R&A and USGA; 2019 and 2023.
 */
export function firstPlaceOfLatePartner(form: 'match' | 'stroke-play', arrival: LateArrival): number {
  const { place, partnerHasStarted, anyoneHasStarted } = arrival
  switch (form) {
    case 'stroke-play':
      return partnerHasStarted ? place + 1 : place
    case 'match':
      return anyoneHasStarted ? place + 1 : place
    default:
      return unreachable(form)
  }
}
