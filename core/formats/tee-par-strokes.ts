import type { HoleKey } from '#core/card/score.ts'
import { type TeeParForm, teeParAddition } from '#core/handicap/tee-par.ts'
import { teeRatingTenths } from '#core/handicap/tee-rating.ts'
import { must } from '#core/values/assert.ts'
import { fraction, roundHalfUp } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import { parOfBall } from './ball-handicap.ts'
import type { GameInput, InputBall, PlayerHandicap, SoundBall } from './game-input.ts'
import { strokesByHole } from './game-strokes.ts'

/** What the pars of the tees add in one game, or their ratings where no Course Handicap holds rating minus par. */
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
  const isByRating = methods.courseHandicap === 'without-rating-minus-par'
  const byRating = isByRating ? ratingAdditionOf(field, form) : null
  return {
    addition: ball => {
      const { handicaps } = inputOf(ball)
      if (handicaps.every(({ handicap }) => handicap.kind === 'plain')) return 0
      return byRating === null ? over(parOfBall(handicaps, methods)) : byRating(handicaps)
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

/**
 * What the ratings of the tees add where no Course Handicap holds rating minus par: what a player's tee is harder by than
 * the easiest of the field, of partners the mean of theirs. None while a tee of the field has no rating.
 * Source: Great Britain and Ireland to March 2024, second-hand; half of the partners' sum for two who play one ball.
 */
function ratingAdditionOf(
  field: readonly InputBall[],
  form: TeeParForm,
): (handicaps: readonly PlayerHandicap[]) => number {
  const players = field.flatMap(({ handicaps }) => handicaps)
  const figures = players.flatMap(({ ratings }) => (ratings === null ? [] : [teeRatingTenths(form, ratings)]))
  if (figures.length < players.length) return () => 0
  const baseline = Math.min(...figures)
  return handicaps => {
    const over = handicaps.map(({ handicap, ratings }) =>
      ratings === null || handicap.kind === 'plain' ? 0 : teeRatingTenths(form, ratings) - baseline,
    )
    const sum = over.reduce((all, each) => all + each, 0)
    return roundHalfUp(fraction(sum, 10 * handicaps.length))
  }
}
