import { holeKey } from '#core/card/score.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { BallId } from '#core/values/ids.ts'

/** The holes of the ball's group in order of play. */
export function holesFor(outing: Outing, ball: string): readonly { readonly value: string; readonly text: string }[] {
  const group = outing.balls.get(ball as BallId)?.group ?? [...outing.groups.keys()][0]
  const { round = [], extra = [] } = (group && outing.groups.get(group)) || {}
  return [...round, ...extra].map(at => ({ value: holeKey(at), text: String(at.hole) }))
}
