import type { BallId } from '#core/values/ids.ts'
import type { ContestName } from './contest-names.ts'
import type { SoundGame } from './game-input.ts'
import type { BallStrokes, MatchSides } from './game-result.ts'

/** Two sides that play a match, and the strokes that are given in it. */
export interface MatchPair {
  readonly sides: MatchSides
  readonly strokes: ReadonlyMap<BallId, BallStrokes>
}

export const isMatch = (contest: ContestName): boolean => contest === 'match' || contest === 'match-of-each-pair'

/**
 * The matches of a game, every side against every other; none where it is no match. The strokes are the difference from
 * the lowest of all, or each match has a difference of its own: a player of three plays two separate matches with one ball.
 * Source: Rules of Golf, rule 21.4; R&A and USGA; 2023. The one difference from the lowest instead is common practice.
 */
export function matchPairsOf(game: SoundGame): readonly MatchPair[] {
  const { contest, strokes } = game
  if (!isMatch(contest)) return []
  const given = (sides: MatchSides) => (contest === 'match' ? strokes : game.strokesBetween(sides.flat()))
  return pairsOf(game.sides).map(sides => ({ sides, strokes: given(sides) }))
}

const pairsOf = (sides: SoundGame['sides']): MatchSides[] =>
  sides.flatMap((one, place) => sides.slice(place + 1).map(other => [one, other] as const))
