import type { HoleKey } from '#core/card/score.ts'
import { playoffHandicap } from '#core/handicap/playoff-handicap.ts'
import type { BallId } from '#core/values/ids.ts'
import { ballHoleOf } from './ball-hole.ts'
import type { SoundGame } from './game-input.ts'
import { isOutOfPlay } from './side-hole.ts'

/** A play-off over extra holes that every side of it has finished: its figures in the order of the sides given. */
export interface PlayOff {
  readonly sides: readonly (readonly BallId[])[]
  readonly holes: readonly HoleKey[]
  /** Strokes over those holes, less in a net game the share of the Playing Handicap. */
  readonly figures: readonly number[]
}

/**
 * The play-off of sides of one ball each that are tied in strokes, over the extra holes that all of them have in their
 * order of play; null until each has a score on each, and where they have no such holes. In a net game a side takes the
 * share of its Playing Handicap that the holes are of eighteen.
 * Source: advice on deciding ties with handicaps, before 2019 (`playoffHandicap`); the sum over the holes: common practice.
 */
export function playOffOf(game: SoundGame, sides: readonly (readonly BallId[])[]): PlayOff | null {
  if (game.measure.unit !== 'strokes' || sides.some(({ length }) => length !== 1)) return null
  const balls = sides.flat()
  const orders = balls.map(ball => extraHolesOf(game, ball))
  const [holes = []] = orders
  if (holes.length === 0 || orders.some(order => order.join() !== holes.join())) return null
  const figures = balls.flatMap(ball => figureOf(game, ball, holes) ?? [])
  return figures.length < balls.length ? null : { sides, holes, figures }
}

const extraHolesOf = (game: SoundGame, ball: BallId): readonly HoleKey[] =>
  (game.balls.get(ball)?.order ?? [])
    .filter(({ isScheduled, key }) => !isScheduled && !isOutOfPlay(game, key))
    .map(({ key }) => key)

function figureOf(game: SoundGame, ball: BallId, holes: readonly HoleKey[]): number | null {
  const own = game.strokes.get(ball)
  const grosses = holes.flatMap(key => {
    const [first, ...others] = ballHoleOf(game, ball, key).worths
    if (first === undefined || others.length > 0 || !first.isHoled || first.value === null) return []
    return [first.value + (game.measure.isNet ? (own?.byHole.get(key) ?? 0) : 0)]
  })
  if (grosses.length < holes.length) return null
  const share = game.measure.isNet ? playoffHandicap(own?.playingHandicap ?? 0, holes.length) : 0
  return grosses.reduce((sum, each) => sum + each, 0) - share
}
