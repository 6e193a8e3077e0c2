import type { BallId, RulingId } from '#core/values/ids.ts'
import { factsOfRound } from './acts-ball.ts'
import type { Certifier, Ruling } from './facts.ts'
import type { Outing } from './outing.ts'
import { settledScores } from './settled-scores.ts'
import { factOrNone, type NewFact } from './stated-fact.ts'

const kindOf = { player: 'certifiedByPlayer', marker: 'certifiedByMarker' } as const

/**
 * Player or marker certifies a ball's scores, hole by hole, as they are settled. Empty while a hole has two scores: the
 * two settle them first.
 * Source: Rules of Golf, rule 3.3b(2); R&A and USGA; 2019 and 2023.
 */
export function certifyFacts(outing: Outing, ball: BallId, by: Certifier): NewFact[] {
  const scores = settledScores(outing, ball)
  return scores === null || scores.length === 0 ? [] : factsOfRound(outing, kindOf[by], ball, { scores })
}

/** Takes a certification away. */
export const uncertifyFacts = (outing: Outing, ball: BallId, by: Certifier): NewFact[] =>
  factsOfRound(outing, kindOf[by], ball, null)

/** The committee's ruling under an id of its own; null takes it away. */
export const rulingFacts = (id: RulingId, ruling: Ruling | null): NewFact[] => [
  factOrNone('ruling', { ruling: id }, ruling),
]
