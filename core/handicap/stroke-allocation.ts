import { assert } from '#core/values/assert.ts'

/**
 * Strokes received on each hole, in the order of the indexes given; negative is given back to the course.
 * The first strokes fall where the index ranks lowest among the holes given, so nine holes of an eighteen-hole card
 * take theirs in ascending order; more strokes than holes start again, and a plus player gives back from the highest.
 * A stroke index printed twice ranks by its place in the list.
 * Source: Rules of Handicapping, Appendix E (and Appendix C for plus players); R&A and USGA; 2020 and 2024. Giving back
 * more than one stroke a hole is derived.
 */
export function allocateStrokes(playingHandicap: number, strokeIndexes: readonly number[]): number[] {
  assert(Number.isSafeInteger(playingHandicap), 'allocateStrokes: a playing handicap is whole strokes')
  const holes = strokeIndexes.length
  const onEveryHole = Math.floor(playingHandicap / holes)
  const furtherStrokes = playingHandicap - onEveryHole * holes
  return ranksOf(strokeIndexes).map(rank => onEveryHole + (rank < furtherStrokes ? 1 : 0))
}

/** Each value's place, from 0, when all are put in ascending order; equal values keep the order of the list. */
function ranksOf(values: readonly number[]): number[] {
  const ranks = values.map(() => 0)
  const ascending = values.map((value, position) => ({ value, position })).sort((a, b) => a.value - b.value)
  for (const [rank, { position }] of ascending.entries()) ranks[position] = rank
  return ranks
}
