import type { PlainTee } from '#core/outing/plain-file.ts'
import type { TeeDraft } from './draft.ts'

/** A tee may have no ratings; then no Handicap Index can be played from it. */
export const hasRatings = ({ courseRating, slope }: TeeDraft): boolean => `${courseRating}${slope}`.trim() !== ''

/** The lengths of the holes to play as typed: all of them or none. */
export const lengthTexts = ({ lengths = [] }: TeeDraft, holes: number): readonly string[] =>
  Array.from({ length: holes }, (_, place) => (lengths[place] ?? '').trim())

export function lengthsOf(tee: TeeDraft, holes: number): PlainTee['lengths'] {
  const byHole = lengthTexts(tee, holes)
  return byHole.every(text => text === '') ? undefined : { unit: tee.unit ?? 'yards', byHole: byHole.map(Number) }
}
