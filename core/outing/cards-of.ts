import { type HoleKey, type HoleScore, holeKey } from '#core/card/score.ts'
import { type OwnerOf, type SettledCard, settleCard, type Writing } from '#core/card/settle-card.ts'
import type { Standing } from '#core/log/fold.ts'
import { partsOfOpId } from '#core/log/op.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import type { Place } from './facts.ts'
import type { FactRow, Reading } from './reading.ts'

/** The rows that a card is made of. */
export type CardRows = Pick<Reading, 'rows'>

/** Every ball's card, and what is late or stray about it. */
export function settledCards(reading: CardRows, balls: Iterable<BallId>): Map<BallId, SettledCard> {
  const writings = writingsByBall(reading.rows('score'))
  const places = new Map(reading.rows('place').map(({ parts, value }) => [parts.ball, value]))
  const closes = new Map(reading.rows('closeBall').map(({ parts, value }) => [parts.ball, closedScores(value.scores)]))
  return new Map(
    [...balls].map(ball => [
      ball,
      settleCard(writings.get(ball) ?? [], ownerOf(places.get(ball) ?? null), closes.get(ball) ?? null),
    ]),
  )
}

function writingsByBall(rows: readonly FactRow<'score'>[]): Map<BallId, Writing[]> {
  const byBall = new Map<BallId, Writing[]>()
  for (const row of rows) {
    const { ball } = row.parts
    if (ball === null) continue
    const writings = byBall.get(ball) ?? []
    if (writings.length === 0) byBall.set(ball, writings)
    for (const standing of row.standings) writings.push(writingOf(row, standing))
  }
  // Stable: several of one key stay in their own order.
  for (const writings of byBall.values()) writings.sort(byKey)
  return byBall
}

const byKey = (a: Writing, b: Writing): number => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)

const writingOf = ({ key, parts }: FactRow<'score'>, { value, op, at }: Standing): Writing => ({
  score: value as HoleScore,
  record: parts.record ?? 'desk',
  key,
  op,
  device: partsOfOpId(op).device,
  at,
  hole: parts.hole ?? 0,
  lap: parts.lap ?? 0,
  group: parts.group,
})

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
