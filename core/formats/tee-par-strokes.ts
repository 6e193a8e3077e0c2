import type { HoleKey } from '#core/card/score.ts'
import { type TeeParForm, teeParAddition } from '#core/handicap/tee-par.ts'
import { must } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import { parOfBall } from './ball-handicap.ts'
import type { GameInput, InputBall, SoundBall } from './game-input.ts'
import { strokesByHole } from './game-strokes.ts'

/** What the pars of the tees add in one game. */
export interface TeePars {
  /** To a ball's strokes, whole. */
  readonly addition: (ball: BallId) => number
  /** To a ball's strokes and pars together, by hole: what its value has to be measured without. */
  readonly byHole: (ball: BallId, strokes: number) => ReadonlyMap<HoleKey, number> | null
}

/**
 * The par differences of a game's tees against the lowest par of its field. Whoever plays from a tee of higher par has
 * the difference added to the playing handicap where results are recorded as strokes; so that holes in hand compare with
 * holes played, strokes against par are then counted against the par less that difference.
 * Source: Rules of Handicapping, rule 6.2b; USGA and R&A; 2020 and 2024. Plain strokes are agreed, tees and all.
 */
export function teeParsOf(
  { balls, methods, sides }: GameInput,
  sound: ReadonlyMap<BallId, SoundBall>,
  form: TeeParForm,
): TeePars {
  const field = (sides?.flat() ?? []).flatMap(ball => balls.get(ball) ?? [])
  const parsOfBalls = field.flatMap(ball => parOfBall(ball.handicaps, methods) ?? [])
  const parsOfCards = field.flatMap(ball => ball.handicaps[0]?.parOfRound ?? [])
  const baseline = Math.min(...parsOfBalls)
  const isMixed = new Set([...parsOfBalls, ...parsOfCards]).size > 1
  const over = (par: number | null): number => (isMixed && par !== null ? teeParAddition(form, par, baseline) : 0)
  const inputOf = (ball: BallId): InputBall => must(balls.get(ball), 'the ball is there')
  return {
    addition: ball => {
      const { handicaps } = inputOf(ball)
      return handicaps.every(({ handicap }) => handicap.kind === 'plain') ? 0 : over(parOfBall(handicaps, methods))
    },
    byHole: (ball, strokes) => {
      const ofCard = over(inputOf(ball).handicaps[0]?.parOfRound ?? null)
      if (ofCard === 0) return null
      const { order } = must(sound.get(ball), 'the ball is there')
      const without = strokesByHole(strokes - ofCard, order)
      return new Map([...strokesByHole(strokes, order)].map(([key, n]) => [key, n - (without.get(key) ?? 0)]))
    },
  }
}
