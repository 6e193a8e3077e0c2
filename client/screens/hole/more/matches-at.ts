import type { HoleKey } from '#core/card/score.ts'
import type { GameResult, MatchSides } from '#core/formats/game-result.ts'

/** Who plays whom in a game on a hole, each pair of sides once; empty for a game without matches and one that waits. */
export function matchesAt(result: GameResult | undefined, key: HoleKey): readonly MatchSides[] {
  if (result?.kind === 'match') return result.matches.map(({ sides }) => sides)
  if (result?.kind !== 'parts') return []
  const sides = result.parts.flatMap(({ match, holes }) => (match && holes.includes(key) ? [match.sides] : []))
  return sides.filter((each, place) => sides.findIndex(other => isSame(other, each)) === place)
}

const isSame = (one: MatchSides, other: MatchSides): boolean => JSON.stringify(one) === JSON.stringify(other)
