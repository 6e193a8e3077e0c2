import * as z from 'zod/mini'
import {
  combineTwoNines,
  combineWithExpected,
  differentialTenths,
  type RatedScore,
  scoreDifferential18,
  scoreDifferentialStableford,
} from '#core/handicap/differential.ts'
import { isPlayingConditions, type PlayingConditions } from '#core/handicap/playing-conditions.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import { type Calculations, calculation, inTenths, unrounded } from './calculation.ts'
import { decimal, slope, tenths, whole } from './published-inputs.ts'

const conditions = z.pipe(
  z.number().check(z.refine(isPlayingConditions)),
  z.transform(value => value as PlayingConditions),
)
const nineHoleScore = z.object({ adjusted_gross: whole, course_rating9: tenths, slope9: slope, pcc: conditions })

const differentialAnswer = (value: Fraction): Answer => ({
  unrounded: unrounded(value),
  differential: inTenths(differentialTenths(value)),
})

const ratedNine = (score: z.output<typeof nineHoleScore>): RatedScore => ({
  adjustedGross: score.adjusted_gross,
  courseRatingTenths: score.course_rating9,
  slope: score.slope9,
  playingConditions: score.pcc,
})

/** Score Differentials: of section d of the published figures. */
export const differentialOps: Calculations = [
  [
    'score_differential_18',
    calculation(z.object({ adjusted_gross: whole, course_rating: tenths, slope, pcc: conditions }), input =>
      differentialAnswer(
        scoreDifferential18({
          adjustedGross: input.adjusted_gross,
          courseRatingTenths: input.course_rating,
          slope: input.slope,
          playingConditions: input.pcc,
        }),
      ),
    ),
  ],
  [
    'score_differential_stableford',
    calculation(
      z.object({
        par: whole,
        course_handicap: whole,
        course_rating: tenths,
        slope,
        pcc: conditions,
        points_off_course_handicap: whole,
      }),
      input =>
        differentialAnswer(
          scoreDifferentialStableford({
            points: input.points_off_course_handicap,
            par: input.par,
            courseHandicap: input.course_handicap,
            courseRatingTenths: input.course_rating,
            slope: input.slope,
            playingConditions: input.pcc,
          }),
        ),
    ),
  ],
  [
    'round_differential',
    calculation(z.object({ unrounded: decimal }), input => ({
      differential: inTenths(differentialTenths(input.unrounded)),
    })),
  ],
  [
    'combine_two_nine_hole_2020',
    calculation(z.object({ first: nineHoleScore, second: nineHoleScore }), ({ first, second }) =>
      differentialAnswer(combineTwoNines(ratedNine(first), ratedNine(second))),
    ),
  ],
  [
    'combine_nine_with_expected_2024',
    calculation(z.object({ nine_hole_differential: decimal, expected_differential: decimal }), input => ({
      differential: inTenths(
        differentialTenths(combineWithExpected(input.nine_hole_differential, input.expected_differential)),
      ),
    })),
  ],
]
