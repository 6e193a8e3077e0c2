import * as z from 'zod/mini'
import { acceptedAs, handicapEditions, isEnoughForAnIndex, totalHoles } from '#core/handicap/acceptable-holes.ts'
import { adjustedGross } from '#core/handicap/adjusted-gross.ts'
import { fourBallScore } from '#core/handicap/four-ball-score.ts'
import { maxHoleScore, netPar } from '#core/handicap/max-hole-score.ts'
import { ballPlaceAt, mostLikelyScores } from '#core/handicap/most-likely-score.ts'
import { isPlayingConditions, playingConditionsFromSample } from '#core/handicap/playing-conditions.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { must } from '#core/values/assert.ts'
import { type Calculations, calculation } from './calculation.ts'
import { acceptedAsCodes } from './published-codes.ts'
import { playedOf18, whole } from './published-inputs.ts'

const strokeIndex = z.int().check(z.gte(1), z.lte(18))
const holesPerScore = z.array(z.literal([9, 18]))
const points = z.array(z.int().check(z.gte(0), z.lte(99)))
const distance = z.number().check(z.gte(0))

const eighteenIndexes = Array.from({ length: 18 }, (_, at) => at + 1)

const strokesAt = (courseHandicap: number, index: number): number =>
  must(allocateStrokes(courseHandicap, eighteenIndexes)[index - 1], 'a stroke index of the eighteen')

const givenUp = z.object({
  strokes_taken: whole,
  on_green_within_5ft: z.boolean(),
  distance_to_hole_yards: z.optional(distance),
  distance_to_hole_feet: z.optional(distance),
})

function placeOf(input: z.output<typeof givenUp>): Parameters<typeof mostLikelyScores>[1] {
  if (input.on_green_within_5ft) return 'on-green-within-5-feet'
  return input.distance_to_hole_yards === undefined
    ? ballPlaceAt(input.distance_to_hole_feet ?? 0, 'feet')
    : ballPlaceAt(input.distance_to_hole_yards, 'yards')
}

const fourBallCard = z.object({
  side_points: whole,
  own_counting_points: points,
  partner_points_on_other_holes: points,
})

const fourBallOf = (input: z.output<typeof fourBallCard>): ReturnType<typeof fourBallScore> =>
  fourBallScore({
    sidePoints: input.side_points,
    ownPoints: input.own_counting_points,
    partnerPoints: input.partner_points_on_other_holes,
  })

/** Scores for handicapping and the day's conditions: of sections d and e of the published figures. */
export const recordOps: Calculations = [
  [
    'max_hole_score',
    calculation(z.object({ par: whole, course_handicap: z.nullable(whole), stroke_index: strokeIndex }), input => ({
      max_score: maxHoleScore(
        input.par,
        input.course_handicap,
        strokesAt(input.course_handicap ?? 0, input.stroke_index),
      ),
    })),
  ],
  [
    'net_par',
    calculation(z.object({ par: whole, course_handicap: whole, stroke_index: strokeIndex }), input => ({
      score: netPar(input.par, strokesAt(input.course_handicap, input.stroke_index)),
    })),
  ],
  [
    'adjusted_gross',
    calculation(
      z.object({
        par: playedOf18,
        stroke_index: playedOf18,
        gross: playedOf18,
        course_handicap: z.nullable(whole),
      }),
      input => {
        const holes = input.gross.map((score, at) => ({
          par: must(input.par[at], 'a par for each hole'),
          strokeIndex: must(input.stroke_index[at], 'a stroke index for each hole'),
          score,
        }))
        const { maxPerHole, total } = adjustedGross(holes, input.course_handicap, 'net-par')
        return {
          max_per_hole: maxPerHole,
          gross_total: input.gross.reduce((sum, each) => sum + each, 0),
          adjusted_gross: total,
        }
      },
    ),
  ],
  ['most_likely', calculation(givenUp, input => ({ allowed: mostLikelyScores(input.strokes_taken, placeOf(input)) }))],
  [
    'score_type_for_holes_played',
    calculation(z.object({ edition: z.enum(handicapEditions), holes_played: whole }), input => ({
      accepted_as: acceptedAsCodes[acceptedAs(input.edition, input.holes_played, true)],
    })),
  ],
  [
    'can_issue_index',
    calculation(z.object({ holes_per_score: holesPerScore }), input => ({
      total_holes: totalHoles(input.holes_per_score),
      issued: isEnoughForAnIndex(input.holes_per_score),
    })),
  ],
  [
    'four_ball_score_for_index',
    calculation(fourBallCard.check(z.refine(input => fourBallOf(input).ok)), input => {
      const score = fourBallOf(input)
      if (!score.ok) throw new Error(score.error)
      return {
        own_holes: score.value.ownHoles,
        scaled_points: score.value.scaledHalfPoints / 2,
        accepted: score.value.isAccepted,
      }
    }),
  ],
  ['pcc_value_allowed', calculation(z.object({ pcc: z.number() }), ({ pcc }) => ({ valid: isPlayingConditions(pcc) }))],
  [
    'pcc_sample',
    calculation(z.object({ scores_by_players_36_0_or_below: z.int().check(z.gte(0)) }), input => ({
      pcc: playingConditionsFromSample(input.scores_by_players_36_0_or_below),
    })),
  ],
]
