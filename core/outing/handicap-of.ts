import type { PlayedHole } from '#core/card/score.ts'
import type { BallHandicap } from '#core/formats/game-input.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import {
  courseHandicap9,
  courseHandicap9WithoutRatingMinusPar,
  courseHandicap18,
  courseHandicap18WithoutRatingMinusPar,
  ratingsTwice,
} from '#core/handicap/course-handicap.ts'
import { unreachable } from '#core/values/assert.ts'
import { fraction } from '#core/values/fraction.ts'
import type { Tee, TeeRatings } from './facts.ts'
import type { Player } from './outing.ts'

/** The methods of a game that a Course Handicap comes from. */
export type HandicapMethods = Pick<GameMethods, 'courseHandicap' | 'nineHoleIndex'>

/**
 * What a player plays off over a round: a course handicap from the index and the tee's ratings, one read off the board,
 * or plain strokes. Nine holes take the ratings of the nine they are; a mixture of both nines has none.
 */
export function handicapOf(
  player: Player,
  tee: Tee | null,
  round: readonly PlayedHole[],
  methods: HandicapMethods,
): BallHandicap {
  const { handicap } = player
  if (handicap === null) return { kind: 'gap', code: 'handicap missing' }
  switch (handicap.kind) {
    case 'plain-strokes':
      return { kind: 'plain', strokes: handicap.strokes }
    case 'course-handicap':
      return { kind: 'course', exact: fraction(handicap.strokes) }
    case 'index':
      return tee === null ? { kind: 'gap', code: 'tee missing' } : fromIndex(handicap.tenths, tee, round, methods)
    default:
      return unreachable(handicap)
  }
}

function fromIndex(
  tenths: number,
  tee: Tee,
  round: readonly PlayedHole[],
  { courseHandicap, nineHoleIndex }: HandicapMethods,
): BallHandicap {
  const ratings = ratingsOfRound(tee, round)
  if (ratings === null) return noRating
  const isWithout = courseHandicap === 'without-rating-minus-par'
  if (round.length > 9) {
    const exact = isWithout
      ? courseHandicap18WithoutRatingMinusPar(tenths, ratings.slope)
      : courseHandicap18(tenths, ratings)
    return { kind: 'course', exact }
  }
  if (nineHoleIndex === null) return { kind: 'gap', code: 'setting missing' }
  const exact = isWithout
    ? courseHandicap9WithoutRatingMinusPar(tenths, ratings.slope, nineHoleIndex)
    : courseHandicap9(tenths, ratings, nineHoleIndex)
  return { kind: 'course', exact }
}

const noRating: BallHandicap = { kind: 'gap', code: 'rating missing' }

/**
 * What a round is rated at from a tee: the eighteen holes, the nine that they are, or the same nine twice. A tee of nine
 * holes that is rated for eighteen keeps that rating.
 */
export function ratingsOfRound(tee: Tee | null, round: readonly PlayedHole[]): TeeRatings | null {
  if (tee === null) return null
  const nine = ratingsOfNine(tee, round)
  if (round.length <= 9) return nine
  return tee.ratings ?? (nine && ratingsTwice(nine))
}

/** Of the nine that every hole of the round is in. */
function ratingsOfNine(tee: Tee, round: readonly PlayedHole[]): TeeRatings | null {
  if (round.every(({ hole }) => hole <= 9)) return tee.frontRatings
  return round.every(({ hole }) => hole > 9) ? tee.backRatings : null
}
