import type { HoleScore } from '#core/card/score.ts'
import type { Writing } from '#core/card/settle-card.ts'
import type { Standing } from '#core/log/fold.ts'
import { partsOfOpId } from '#core/log/op.ts'
import type { BallId } from '#core/values/ids.ts'
import type { KeyParts } from './facts.ts'

/** Everything written about each ball, in order of the keys. */
export type Writings = ReadonlyMap<BallId, readonly Writing[]>

export function addWritings(
  to: Map<BallId, Writing[]>,
  key: string,
  parts: KeyParts,
  standings: readonly Standing[],
): void {
  if (parts.ball === null) return
  let writings = to.get(parts.ball)
  if (writings === undefined) {
    writings = []
    to.set(parts.ball, writings)
  }
  for (const standing of standings) writings.push(writingOf(key, parts, standing))
}

/** Each card sorts its own, which is less than sorting a day. Stable: several of one key stay in their own order. */
export function inOrder(writings: ReadonlyMap<BallId, Writing[]>): Writings {
  for (const ofBall of writings.values()) ofBall.sort(byKey)
  return writings
}

const byKey = (a: Writing, b: Writing): number => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)

const writingOf = (key: string, parts: KeyParts, { value, op, at }: Standing): Writing => ({
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
