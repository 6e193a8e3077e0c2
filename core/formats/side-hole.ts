import type { HoleKey } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'

/** True where the hole counts nothing to anybody. */
export const isOutOfPlay = ({ happenings }: SoundGame, key: HoleKey): boolean =>
  happenings.holesOut.get(key)?.counts === 'nothing'

/** How many of the side's balls count on a hole. */
export const countOn = ({ ballRule, balls, methods }: SoundGame, side: readonly BallId[], hole: HoleKey): number =>
  ballRule.countOf({ methods, hole, balls: side.length, order: (side[0] && balls.get(side[0])?.order) || [] })

/** True while one of the side's balls has two scores on the hole, whatever they would change. */
export const isUnsettled = (game: SoundGame, side: readonly BallId[], key: HoleKey): boolean =>
  side.some(ball => game.balls.get(ball)?.card.scores.get(key)?.kind === 'two')
