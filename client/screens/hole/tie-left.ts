import type { Group } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'

/** Sides that the countback leaves tied, one of the group's among them, where the game's terms are extra holes. */
export function tieLeft(results: Results, group: Group): readonly (readonly BallId[])[] | null {
  for (const result of results.games.values()) {
    if (result.kind !== 'total' || result.unit !== 'strokes') continue
    for (const { sides, decidedBy, ifStillTied } of result.ties) {
      if (ifStillTied !== 'extra-holes') continue
      const tied = sides.filter((_, place) => isTied(place, decidedBy))
      if (tied.flat().some(ball => group.balls.includes(ball))) return tied
    }
  }
  return null
}

/** With the side before it or the one behind it. */
const isTied = (place: number, decidedBy: readonly (string | null)[]): boolean =>
  (place < decidedBy.length && decidedBy[place] === null) || (place > 0 && decidedBy[place - 1] === null)
