import type { HoleKey } from '#core/card/score.ts'
import { scoresOn } from '#core/card/settle-card.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'
import type { SideHole } from './game-result.ts'
import type { BallHole } from './parts.ts'
import { isAbsent, isOutOfHole } from './taking-part.ts'

/**
 * What a side has on a hole of a match. A stroke conceded makes the ball's score in this match alone; a ball that is not
 * there, or out of the hole by a ruling, has none, and the side goes on with the other.
 * Source: Rules of Golf, rules 3.2b and 23.4; R&A and USGA; 2019 and 2023.
 */
export const matchSideHole = (game: SoundGame, side: readonly BallId[], key: HoleKey): SideHole =>
  game.ballRule.valueOf(
    side.map(ball => matchBallHole(game, ball, key)),
    game.measure.better,
  )

function matchBallHole(game: SoundGame, ball: BallId, key: HoleKey): BallHole {
  const found = game.balls.get(ball)
  const hole = found?.holes.get(key)
  if (found === undefined || hole === undefined) return { ball, values: [] }
  if (isAbsent(game, ball, key) || isOutOfHole(game, ball, key)) return { ball, values: [null] }
  const conceded = game.happenings.strokeConcessions.find(each => each.ball === ball && each.hole === key)
  const scores = conceded === undefined ? scoresOn(found.card, key) : [conceded.score]
  const at = { par: hole.par, strokes: game.strokes.get(ball)?.byHole.get(key) ?? 0 }
  return { ball, values: scores.map(score => game.measure.valueOf(at, score)) }
}
