import { holeKey, type PlayedHole } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import { orderOfBall } from './game-input-of.ts'
import type { Outing } from './outing.ts'

export interface Two extends PlayedHole {
  readonly ball: BallId
}

/**
 * The twos of the day, a side prize: every hole of the round that a ball holed in a gross two, in the order of the balls and
 * of their play. Two scores are no two until one is chosen; a hole out of play gives none.
 * Common practice.
 */
export const twosOf = (outing: Outing): readonly Two[] =>
  [...outing.balls.values()].flatMap(ball => {
    const card = outing.cards.get(ball.id)
    return orderOfBall(outing, ball).round.flatMap(({ hole, lap }) => {
      const key = holeKey({ hole, lap })
      const score = card?.scores.get(key)
      const isTwo = score?.kind === 'one' && score.score === 2 && !outing.notes.holesOut.has(key)
      return isTwo ? [{ ball: ball.id, hole, lap }] : []
    })
  })
