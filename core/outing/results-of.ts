import { resultOfPrepared } from '#core/formats/game-of.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import type { PreparedGame } from '#core/formats/prepared-game.ts'
import type { BallId, GameId } from '#core/values/ids.ts'
import { type Levels, levelsOf } from './levels.ts'
import type { Outing } from './outing.ts'
import type { Results } from './results.ts'

/** What an outing came to, with what that was made of. */
export interface Reckoned {
  readonly levels: Levels
  readonly results: Results
}

/** Every game, and every card's threes for whoever asks. */
export const resultsOf = (outing: Outing): Results => resultsAfter(null, levelsOf(outing))

/** The results where earlier ones of the same outing are known; what no score since enters is kept as it is. */
export function resultsAfter(before: Reckoned | null, levels: Levels): Results {
  const games = [...levels.prepared].map(([id, game]) => [id, resultAfter(before, id, game)] as const)
  return { games: new Map(games), cards: levels.cards }
}

function resultAfter(before: Reckoned | null, id: GameId, game: PreparedGame): GameResult {
  const earlier = before?.levels.prepared.get(id)
  const result = before?.results.games.get(id)
  if (earlier === undefined || result === undefined) return resultOfPrepared(game, null)
  if (earlier === game) return result
  const changed = cardsChanged(earlier, game)
  return resultOfPrepared(game, changed && { result, changed })
}

/** The balls whose cards differ; null where anything else of the game may. */
function cardsChanged(before: PreparedGame, after: PreparedGame): ReadonlySet<BallId> | null {
  if (before.kind === 'gap' || after.kind === 'gap' || before.sound.strokes !== after.sound.strokes) return null
  const earlier = before.sound.balls
  const changed = [...after.sound.balls].filter(([id, { card }]) => earlier.get(id)?.card !== card)
  return new Set(changed.map(([id]) => id))
}
