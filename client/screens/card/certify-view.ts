import type { Certification, CertificationDifference, CertificationHole } from '#core/card/certification.ts'
import type { HoleScore, PlayedHole } from '#core/card/score.ts'
import { inOrder } from '../../parts/mark.ts'
import { formatList, formatScore } from '../../words/figures.ts'
import { say } from '../../words/say-any.ts'

/** A hole that the two have to look at. */
export interface DifferenceLine extends PlayedHole {
  readonly text: string
  /** The scores to choose from; empty where there is nothing to choose. */
  readonly choices: readonly HoleScore[]
}

/** What keeps a card from being certified, or what has changed since, hole by hole in order of play. */
export const differencesOf = ({ holes }: Certification): readonly DifferenceLine[] => holes.flatMap(linesOf)

function linesOf(found: CertificationHole): readonly DifferenceLine[] {
  const [hole = 0, lap = 1] = found.key.split('/').map(Number)
  return found.differences.flatMap(difference => {
    // The card itself names the holes with nothing written.
    if (difference === 'not settled') return []
    if (difference !== 'records differ') return [{ hole, lap, text: differenceWords(difference, hole), choices: [] }]
    const choices = inOrder([...found.card, ...found.marker, ...found.desk])
    return [{ hole, lap, text: recordsWords(hole, found), choices }]
  })
}

type OfCertifier = Exclude<CertificationDifference, 'not settled' | 'records differ'>

function differenceWords(difference: OfCertifier, hole: number): string {
  const isPlayer = difference === 'changed since player certified' || difference === 'not certified by player'
  const isChanged = difference === 'changed since player certified' || difference === 'changed since marker certified'
  const who = say(isPlayer ? 'certify-player-word' : 'certify-marker-word')
  return say(isChanged ? 'certify-changed' : 'certify-uncertified', { hole, who })
}

function recordsWords(hole: number, { card, marker, desk }: CertificationHole): string {
  if (marker.length + desk.length === 0)
    return say('certify-two', { hole, card: inOrder(card).map(formatScore).join(' / ') })
  const words = (scores: readonly HoleScore[]): string =>
    scores.length === 0 ? say('certify-blank') : formatList(scores.map(formatScore))
  const fill = { hole, card: words(card), marker: words(marker), desk: words(desk) }
  return say(desk.length > 0 ? 'certify-differs-desk' : 'certify-differs', fill)
}

/** "certified", "certified, but a score has changed since", "not certified" */
export function certifierWords({ hasCertified, stands }: Certification['player']): string {
  if (stands) return say('certify-stands')
  return say(hasCertified ? 'certify-fell' : 'certify-not')
}
