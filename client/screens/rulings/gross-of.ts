import { holeKey } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'

/** The sum of a ball's scores over its round; null while a hole is open, without a score or has two. */
export function grossOf(outing: Outing, ball: string): number | null {
  const found = outing.balls.get(ball as BallId)
  const round = (found?.group && outing.groups.get(found.group)?.round) || []
  const card = outing.cards.get(ball as BallId)
  const scores = round.map(at => card?.scores.get(holeKey(at)))
  const gross = scores.map(each => (each?.kind === 'one' && typeof each.score === 'number' ? each.score : null))
  return gross.length > 0 && gross.every(each => each !== null) ? gross.reduce((sum, each) => sum + each, 0) : null
}
