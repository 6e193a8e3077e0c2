import type { HoleKey } from '#core/card/score.ts'
import type { GameResult, MatchSides } from '#core/formats/game-result.ts'
import type { Game } from '#core/outing/outing.ts'

/** Who plays whom in a game on a hole; empty for a game without matches and one that still waits. */
export function matchesAt(_game: Game, result: GameResult | undefined, _key: HoleKey): readonly MatchSides[] {
  return result?.kind === 'match' ? result.matches.map(({ sides }) => sides) : []
}
