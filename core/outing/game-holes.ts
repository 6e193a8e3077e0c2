import { type HoleKey, holeKey, type PlayedHole } from '#core/card/score.ts'
import type { GameId, GroupId } from '#core/values/ids.ts'
import type { HoleAndLap } from './facts.ts'
import { orderOfBall } from './game-input-of.ts'
import type { Game, Outing } from './outing.ts'
import { type NewFact, statedFact } from './stated-fact.ts'

/**
 * Holes of the order of play that a game leaves out: those before it began and those after it was stopped. The order is
 * that of the group of its first ball.
 */
export function holesOutside(outing: Outing, { sides, holes }: Pick<Game, 'sides' | 'holes'>): readonly HoleKey[] {
  const first = outing.balls.get(sides?.flat()[0] ?? ('' as never))
  if (holes === null || first === undefined) return []
  const { round, extra } = orderOfBall(outing, first)
  const keys = [...round, ...extra].map(holeKey)
  const [from, to] = [placeOf(keys, holes.from), placeOf(keys, holes.to)]
  return keys.filter((_, place) => (from !== null && place < from) || (to !== null && place > to))
}

/** Null for no hole, and for one that is not played. */
function placeOf(keys: readonly HoleKey[], at: HoleAndLap | null): number | null {
  const place = at === null ? -1 : keys.indexOf(holeKey({ hole: at[0], lap: at[1] }))
  return place === -1 ? null : place
}

export interface GameOver {
  /** The id that the game's facts carry. */
  readonly game: GameId
  /** Null for a game of the whole outing. */
  readonly group: GroupId | null
  /** The first and the last hole; null for the round's own. */
  readonly from: PlayedHole | null
  readonly to: PlayedHole | null
}

/** A game played over some of the holes: what is written on the others stays and counts elsewhere. */
export function gameHolesFacts({ game, group, from, to }: GameOver): NewFact[] {
  const at = group === null ? { game } : { group, game }
  return [statedFact('gameHoles', at, { from: from && pairOf(from), to: to && pairOf(to) })]
}

const pairOf = ({ hole, lap }: PlayedHole): HoleAndLap => [hole, lap]
