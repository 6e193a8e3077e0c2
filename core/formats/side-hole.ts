import type { HoleKey } from '#core/card/score.ts'
import { scoresOn } from '#core/card/settle-card.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'
import type { SideHole } from './game-result.ts'
import type { BallHole } from './parts.ts'

/** What a side has on a hole: each ball's measure, put together by the ball rule. */
export function sideHoleOf(game: SoundGame, side: readonly BallId[], key: HoleKey): SideHole {
  return game.ballRule.valueOf(
    side.map(ball => ballHoleOf(game, ball, key)),
    game.measure.better,
  )
}

function ballHoleOf(game: SoundGame, ball: BallId, key: HoleKey): BallHole {
  const found = game.balls.get(ball)
  const hole = found?.holes.get(key)
  if (found === undefined || hole === undefined) return { ball, values: [] }
  const at = { par: hole.par, strokes: game.strokes.get(ball)?.byHole.get(key) ?? 0 }
  return { ball, values: scoresOn(found.card, key).map(score => game.measure.valueOf(at, score)) }
}

/** True while one of the side's balls has two scores on the hole, whatever they would change. */
export const isUnsettled = (game: SoundGame, side: readonly BallId[], key: HoleKey): boolean =>
  side.some(ball => game.balls.get(ball)?.card.scores.get(key)?.kind === 'two')

/** True when something is written for a ball of the side. */
export const isWritten = (game: SoundGame, side: readonly BallId[], key: HoleKey): boolean =>
  side.some(ball => (game.balls.get(ball)?.card.scores.get(key)?.kind ?? 'none') !== 'none')
