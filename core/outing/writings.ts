import type { ScoreRow } from '#core/card/settle-card.ts'
import type { Standing } from '#core/log/fold.ts'
import type { BallId } from '#core/values/ids.ts'
import type { KeyParts } from './facts.ts'

/** Everything written about each ball, hole by hole, then in order of the keys. */
export type Writings = ReadonlyMap<BallId, readonly ScoreRow[]>

/** A score's key names its hole, and a value that this version knows is a score. */
export function addWritings(to: Map<BallId, ScoreRow[]>, parts: KeyParts, standings: readonly Standing[]): void {
  if (parts.ball === null) return
  const row = { at: parts as ScoreRow['at'], entries: standings as ScoreRow['entries'] }
  const rows = to.get(parts.ball)
  if (rows === undefined) to.set(parts.ball, [row])
  else rows.push(row)
}

/** Each card sorts its own, nearly in order as it is. */
export function inOrder(writings: ReadonlyMap<BallId, ScoreRow[]>): Writings {
  for (const ofBall of writings.values()) ofBall.sort(byHole)
  return writings
}

const byHole = (a: ScoreRow, b: ScoreRow): number =>
  a.at.lap - b.at.lap || a.at.hole - b.at.hole || (keyOf(a) < keyOf(b) ? -1 : 1)

const keyOf = ({ entries }: ScoreRow): string => entries[0]?.key ?? ''
