import { type HoleKey, holeKey } from '#core/card/score.ts'
import { scoresOn } from '#core/card/settle-card.ts'
import { maxHoleScore } from '#core/handicap/max-hole-score.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { courseHoleOf, orderOfBall } from './game-input-of.ts'
import type { CourseHandicapFound, HandicappingGap, HandicappingHole } from './handicapping.ts'
import { holesAbsent } from './holes-absent.ts'
import type { Ball, Outing } from './outing.ts'

/**
 * The scheduled holes of a ball as they count for handicapping, in order of play; those the course lacks are left out. A
 * hole out of play or without the ball is not played.
 */
export function handicappingHoles(outing: Outing, ball: Ball, found: CourseHandicapFound): HandicappingHole[] {
  const holes = orderOfBall(outing, ball).round.flatMap(played => {
    const hole = courseHoleOf(outing, ball, played)
    return hole === null ? [] : [{ key: holeKey(played), ...hole }]
  })
  const absent = holesAbsent(outing, ball)
  const indexes = holes.map(({ index }) => index)
  const strokes = found.kind === 'gap' ? null : allocateStrokes(found.kind === 'known' ? found.strokes : 0, indexes)
  const courseHandicap = found.kind === 'known' ? found.strokes : null
  return holes.map(({ key, par, index }, place) => {
    const received = strokes?.[place] ?? null
    const most = received === null ? null : maxHoleScore(par, courseHandicap, received)
    const score = outing.notes.holesOut.has(key) ? 'not-played' : scoreOn(outing, ball, key, absent.has(key))
    return { key, par, index, strokes: received, most, score }
  })
}

/** Null while nobody knows. */
function scoreOn(outing: Outing, { id }: Ball, key: HoleKey, isAbsent: boolean): HandicappingHole['score'] {
  const card = outing.cards.get(id)
  const [score, ...others] = card === undefined ? [] : scoresOn(card, key)
  if (others.length > 0) return null
  if (score === undefined) return isAbsent ? 'not-played' : null
  return score === 'picked-up' ? (outing.notes.likelyScores.get(id)?.get(key) ?? 'started') : score
}

export const whyNoScore = (outing: Outing, { id }: Ball, key: HoleKey): HandicappingGap['code'] =>
  outing.cards.get(id)?.scores.get(key)?.kind === 'two' ? 'two scores' : 'nothing written'
