import { holeKey } from '#core/card/score.ts'
import type { Group, Outing } from '#core/outing/outing.ts'
import type { Results } from '#core/outing/results.ts'
import type { BallId } from '#core/values/ids.ts'
import { holesOf, isSettled } from './hole-view.ts'

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

/** The same, once the group's own balls of it have a score on the last hole that there is: then one more is asked about. */
export function tieAtEnd(outing: Outing, results: Results, group: Group): ReturnType<typeof tieLeft> {
  const last = holesOf(group).at(-1)
  const tied = last ? tieLeft(results, group) : null
  const own = tied?.flat().filter(ball => group.balls.includes(ball)) ?? []
  return last && own.every(ball => isSettled(outing, ball, holeKey(last))) ? tied : null
}

/** With the side before it or the one behind it. */
const isTied = (place: number, decidedBy: readonly (string | null)[]): boolean =>
  (place < decidedBy.length && decidedBy[place] === null) || (place > 0 && decidedBy[place - 1] === null)
