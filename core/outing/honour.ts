import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { MatchLine } from '#core/formats/game-result.ts'
import type { BallId } from '#core/values/ids.ts'
import type { Group, Outing } from './outing.ts'
import type { Results } from './results.ts'

/** Who tees off first, and what gave it to them. */
export interface Honour {
  readonly balls: readonly BallId[]
  readonly by: 'match' | 'score'
}

/**
 * Who has the honour on a hole: the side that won the last hole not halved in the match between all of the group, else
 * the one ball with the lowest gross score on the last hole where one was lowest. Null on the first hole, where every
 * hole before was level, and where the hole before is open or has two scores.
 * Source: Rules of Golf, rule 6.4a and 6.4b; R&A and USGA; 2019 and 2023 (from memory).
 */
export function honourOf(outing: Outing, results: Results, group: Group, at: PlayedHole): Honour | null {
  const holes = [...group.round, ...group.extra].map(holeKey)
  const before = holes.slice(0, Math.max(0, holes.indexOf(holeKey(at)))).reverse()
  const match = matchOfAll(results, group)
  return match === null ? byScore(outing, group, before) : byMatch(match, before)
}

/** A match that every ball of the group is in. */
function matchOfAll(results: Results, { balls }: Group): MatchLine | null {
  const matches = [...results.games.values()].flatMap(game => (game.kind === 'match' ? game.matches : []))
  return matches.find(({ sides }) => balls.every(ball => sides.flat().includes(ball))) ?? null
}

function byMatch({ holes, sides }: MatchLine, before: readonly HoleKey[]): Honour | null {
  for (const key of before) {
    const hole = holes.find(each => each.key === key)
    if (hole?.reason === 'out-of-play') continue
    const { result = null } = hole ?? {}
    if (result === 1 || result === -1) return { balls: sides[result === 1 ? 0 : 1], by: 'match' }
    if (result !== 0) return null
  }
  return null
}

function byScore(outing: Outing, { balls }: Group, before: readonly HoleKey[]): Honour | null {
  if (balls.length < 2) return null
  for (const key of before) {
    if (outing.notes.holesOut.has(key)) continue
    const found = balls.map(ball => outing.cards.get(ball)?.scores.get(key))
    if (found.some(each => each?.kind !== 'one')) return null
    const gross = found.map(each => (each?.kind === 'one' && typeof each.score === 'number' ? each.score : null))
    const holed = gross.filter(each => each !== null)
    const lowest = balls.filter((_, place) => gross[place] === Math.min(...holed))
    const [first, ...level] = lowest
    if (first !== undefined && level.length === 0) return { balls: [first], by: 'score' }
  }
  return null
}
