import { type Card, type CardScore, recordOf } from './card.ts'
import type { HoleKey, HoleScore } from './score.ts'
import { scoresOn } from './settle-card.ts'

/** Hole scores that somebody stands by; null where they have certified nothing. */
export type CertifiedScores = ReadonlyMap<HoleKey, HoleScore> | null

/** Why a hole is on the list of differences. */
export const certificationDifferences = [
  'records differ',
  'not settled',
  'changed since player certified',
  'changed since marker certified',
  'not certified by player',
  'not certified by marker',
] as const
export type CertificationDifference = (typeof certificationDifferences)[number]

export interface CertificationHole {
  readonly key: HoleKey
  /** What the group's card says: nothing, one value, or several where its own phones differ. */
  readonly card: readonly HoleScore[]
  readonly marker: readonly HoleScore[]
  readonly desk: readonly HoleScore[]
  /** What the records agree on; null while they do not or say nothing. */
  readonly settled: HoleScore | null
  readonly byPlayer: HoleScore | null
  readonly byMarker: HoleScore | null
  readonly differences: readonly CertificationDifference[]
}

export interface CertificationOf {
  readonly hasCertified: boolean
  /** It names every hole and the settled values are those it names. */
  readonly stands: boolean
}

export interface Certification {
  /** In order of play. */
  readonly holes: readonly CertificationHole[]
  /** Every hole has one settled result. */
  readonly isComplete: boolean
  readonly player: CertificationOf
  readonly marker: CertificationOf
  /** Complete, and both stand by it. */
  readonly isCertified: boolean
}

/**
 * What player and marker certified of a card, hole by hole, beside what the records say; a certification stands while the
 * settled values are those. `order` are the holes that the card owes: those played, in order of play.
 * Source: Rules of Golf, rule 3.3b(2); R&A and USGA; 2019 and 2023. That a corrected hole is certified again: common
 * practice of electronic cards.
 */
export function certificationOf(
  order: readonly HoleKey[],
  card: Card,
  byPlayer: CertifiedScores,
  byMarker: CertifiedScores,
): Certification {
  const holes = order.map(key => holeOf(key, card, byPlayer, byMarker))
  const isComplete = holes.every(({ settled }) => settled !== null)
  const player = partOf(holes, byPlayer, ({ byPlayer: score }) => score)
  const marker = partOf(holes, byMarker, ({ byMarker: score }) => score)
  return { holes, isComplete, player, marker, isCertified: isComplete && player.stands && marker.stands }
}

function partOf(
  holes: readonly CertificationHole[],
  scores: CertifiedScores,
  certified: (hole: CertificationHole) => HoleScore | null,
): CertificationOf {
  const stands = holes.length > 0 && holes.every(hole => hole.settled !== null && hole.settled === certified(hole))
  return { hasCertified: scores !== null, stands: scores !== null && stands }
}

function holeOf(key: HoleKey, card: Card, player: CertifiedScores, marker: CertifiedScores): CertificationHole {
  const found = card.scores.get(key)
  const [one = null, ...others] = scoresOn(card, key)
  const settled = others.length === 0 ? one : null
  const byPlayer = player?.get(key) ?? null
  const byMarker = marker?.get(key) ?? null
  const differences: CertificationDifference[] = []
  if (others.length > 0) differences.push('records differ')
  else if (settled === null) differences.push('not settled')
  if (byPlayer !== null && byPlayer !== settled) differences.push('changed since player certified')
  if (byMarker !== null && byMarker !== settled) differences.push('changed since marker certified')
  if (player !== null && byPlayer === null && settled !== null) differences.push('not certified by player')
  if (marker !== null && byMarker === null && settled !== null) differences.push('not certified by marker')
  return {
    key,
    card: saidIn(found, 'card'),
    marker: saidIn(found, 'marker'),
    desk: saidIn(found, 'desk'),
    settled,
    byPlayer,
    byMarker,
    differences,
  }
}

const saidIn = (found: CardScore | undefined, record: 'card' | 'marker' | 'desk'): HoleScore[] =>
  found === undefined || found.kind === 'none'
    ? []
    : [...new Set(found.entries.filter(entry => recordOf(entry) === record).map(({ value }) => value))]
