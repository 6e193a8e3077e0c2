import { scoresOn } from '#core/card/settle-card.ts'
import type { BallId } from '#core/values/ids.ts'
import type { ClosedScore } from './facts.ts'
import type { Outing } from './outing.ts'

/** What a ball's records agree on, hole by hole; null while a hole has two scores, and for a ball that is not here. */
export function settledScores(outing: Outing, ball: BallId): ClosedScore[] | null {
  const card = outing.cards.get(ball)
  if (card === undefined) return null
  const settled: ClosedScore[] = []
  for (const key of card.scores.keys()) {
    const [score, ...others] = scoresOn(card, key)
    if (others.length > 0) return null
    const [hole = 0, lap = 0] = key.split('/').map(Number)
    if (score !== undefined) settled.push([hole, lap, score])
  }
  return settled.sort(inCardOrder)
}

export const inCardOrder = ([a, lapA]: ClosedScore, [b, lapB]: ClosedScore): number => lapA - lapB || a - b
