import { adjustedGross, type NotPlayedMethod } from '#core/handicap/adjusted-gross.ts'
import {
  differentialTenths,
  type RatedScore,
  scoreDifferential9,
  scoreDifferential18,
} from '#core/handicap/differential.ts'
import type { PlayingConditions } from '#core/handicap/playing-conditions.ts'
import { must } from '#core/values/assert.ts'
import type { TeeRatings } from './facts.ts'
import type { AdjustedScore, Differential, HandicappingHole } from './handicapping.ts'

/** The adjusted gross score of a whole round; no differential without ratings, or while holes wait for an expected score. */
export function adjustedScore(
  holes: readonly HandicappingHole[],
  courseHandicap: number | null,
  notPlayed: NotPlayedMethod,
  ratings: TeeRatings | null,
  playingConditions: PlayingConditions,
): AdjustedScore {
  const rated = holes.map(({ par, index, score }) => ({
    par,
    strokeIndex: index,
    score: must(score, 'adjustedScore: every hole has a score'),
  }))
  const { counted, total, holesLeftOut } = adjustedGross(rated, courseHandicap, notPlayed)
  const isRated = ratings !== null && holesLeftOut === 0
  const differential = isRated
    ? differentialOf(holes.length, { ...ratings, adjustedGross: total, playingConditions })
    : null
  return { notPlayed, counted, total, holesLeftOut, differential }
}

function differentialOf(holes: number, score: RatedScore): Differential {
  if (holes <= 9) return { holes: 9, unrounded: scoreDifferential9(score), tenths: null }
  const unrounded = scoreDifferential18(score)
  return { holes: 18, unrounded, tenths: differentialTenths(unrounded) }
}
