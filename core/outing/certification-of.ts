import { emptyCard } from '#core/card/card.ts'
import { type Certification, type CertifiedScores, certificationOf } from '#core/card/certification.ts'
import { type HoleKey, holeKey } from '#core/card/score.ts'
import type { ClosedScore } from './facts.ts'
import { orderOfBall } from './game-input-of.ts'
import { holesAbsent } from './holes-absent.ts'
import type { Ball, Outing } from './outing.ts'

/** A ball's card with what player and marker certified; a hole out of play or without the ball is not owed. */
export function certificationOfBall(outing: Outing, ball: Ball): Certification {
  const absent = holesAbsent(outing, ball)
  const owed = orderOfBall(outing, ball)
    .round.map(holeKey)
    .filter(key => !absent.has(key) && !outing.notes.holesOut.has(key))
  const card = outing.cards.get(ball.id) ?? emptyCard
  const certified = outing.notes.certified.get(ball.id)
  return certificationOf(owed, card, scoresOf(certified?.byPlayer), scoresOf(certified?.byMarker))
}

const scoresOf = (certified: readonly ClosedScore[] | null | undefined): CertifiedScores =>
  certified === null || certified === undefined
    ? null
    : new Map<HoleKey, ClosedScore[2]>(certified.map(([hole, lap, score]) => [holeKey({ hole, lap }), score]))
