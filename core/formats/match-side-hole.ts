import type { HoleKey } from '#core/card/score.ts'
import { scoresOn } from '#core/card/settle-card.ts'
import type { BallId } from '#core/values/ids.ts'
import { ballInGame, measuredHole, worthOf } from './ball-hole.ts'
import { sideValueOf } from './counting-balls.ts'
import type { SoundGame } from './game-input.ts'
import type { SideHole } from './game-result.ts'
import type { BallHole } from './parts.ts'
import { countOn } from './side-hole.ts'
import { isAbsent, isOutOfHole } from './taking-part.ts'

/**
 * What a side has on a hole of a match. A stroke conceded makes the ball's score in this match alone; a ball that is not
 * there, or out of the hole by a ruling, has none, and the side goes on with the other.
 * Source: Rules of Golf, rules 3.2b and 23.4; R&A and USGA; 2019 and 2023.
 */
export const matchSideHole = (game: SoundGame, side: readonly BallId[], key: HoleKey): SideHole =>
  sideValueOf(
    side.map(ball => matchBallHole(game, ball, key)),
    countOn(game, side, key),
    game.measure,
  )

function matchBallHole(game: SoundGame, ball: BallId, key: HoleKey): BallHole {
  const own = ballInGame(game, ball)
  const at = own && measuredHole(game, own, key)
  if (own === null || at === null) return { ball, worths: [], level: 0, notes: [] }
  const { par: level } = at
  if (isAbsent(game, ball, key) || isOutOfHole(game, ball, key)) {
    return { ball, worths: [worthOf(game.measure, at, null)], level, notes: [] }
  }
  const conceded = game.happenings.strokeConcessions.find(each => each.ball === ball && each.hole === key)
  const scores = conceded === undefined ? scoresOn(own.card, key) : [conceded.score]
  const grosses = scores.map(score => (typeof score === 'number' ? score : null))
  return { ball, worths: grosses.map(gross => worthOf(game.measure, at, gross)), level, notes: [] }
}
