import { certificationOfBall } from '#core/outing/certification-of.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'

/**
 * True from a ball's first score until every hole of its round is settled or the desk has closed its card, where the
 * outing is played under the Rules. What is said of the rule in the words of the screens bars advice on a shot meanwhile.
 */
export function isInRulesRound(outing: Outing, ball: BallId): boolean {
  const [card, own] = [outing.cards.get(ball), outing.balls.get(ball)]
  if (!outing.rules || !card || !own || card.scores.size === 0 || card.isClosed) return false
  return !certificationOfBall(outing, own).isComplete
}
