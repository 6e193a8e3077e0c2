import { type HoleKey, type HoleScore, holeKey } from '#core/card/score.ts'
import { type OwnerOf, type SettledCard, settleCard } from '#core/card/settle-card.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import type { Place } from './facts.ts'
import type { CardFacts } from './reading.ts'

/** Every ball's card, and what is late or stray about it. */
export function settledCards(reading: CardFacts, balls: Iterable<BallId>): Map<BallId, SettledCard> {
  const places = new Map(reading.rows('place').map(({ parts, value }) => [parts.ball, value]))
  const closes = new Map(reading.rows('closeBall').map(({ parts, value }) => [parts.ball, closedScores(value.scores)]))
  return new Map(
    [...balls].map(ball => [
      ball,
      settleCard(reading.writings.get(ball) ?? [], ownerOf(places.get(ball) ?? null), closes.get(ball) ?? null),
    ]),
  )
}

/** Where a ball's place puts it. */
type Speakers = Pick<Place, 'elsewhere'> & { readonly group: GroupId | null }

/** The group whose writing counts on a hole: the ball's own, but for the holes that its place names elsewhere. */
export const ownerOf =
  (place: Speakers | null): OwnerOf =>
  at => {
    const elsewhere = place?.elsewhere.find(({ holes }) =>
      holes.some(([hole, lap]) => hole === at.hole && lap === at.lap),
    )
    return elsewhere?.group ?? place?.group ?? null
  }

const closedScores = (scores: readonly (readonly [number, number, HoleScore])[]): ReadonlyMap<HoleKey, HoleScore> =>
  new Map(scores.map(([hole, lap, score]) => [holeKey({ hole, lap }), score]))
