import * as z from 'zod/mini'
import { parCandidates } from '#core/card/par-by-length.ts'
import { holeDifficultyTenths } from '#core/handicap/hole-difficulty.ts'
import { isSlope, ratedGenders, slopeFromRatings } from '#core/handicap/slope.ts'
import { adviseOnStrokeIndexes } from '#core/handicap/stroke-index-advice.ts'
import { fraction, roundHalfUp } from '#core/values/fraction.ts'
import { metresFromYards, yardsFromMetres } from '#core/values/length.ts'
import { type Calculations, calculation, measured, unrounded } from './calculation.ts'
import { length, playedOf18, tenths, whole } from './published-inputs.ts'

const gender = z.enum(ratedGenders)

/** What a course is rated and measured at: sections c and j of the published figures. */
export const courseOps: Calculations = [
  [
    'check_stroke_index_allocation',
    calculation(z.object({ stroke_index: playedOf18 }), ({ stroke_index }) => {
      const advice = adviseOnStrokeIndexes(stroke_index)
      return {
        permutation: advice.isPermutation,
        odd_even_split: advice.hasOddEvenSplit,
        lowest_in_middle_triad: advice.hasLowestInMiddle,
        second_lowest_as_recommended: advice.hasSecondLowestApart,
        no_low_consecutive: advice.hasNoLowNeighbours,
      }
    }),
  ],
  [
    'hole_difficulty',
    calculation(z.object({ scratch_value: tenths, bogey_value: tenths, par: whole }), input => ({
      over_par: unrounded(fraction(holeDifficultyTenths(input.scratch_value, input.bogey_value, input.par), 10)),
    })),
  ],
  ['slope_valid', calculation(z.object({ slope: z.number() }), ({ slope }) => ({ valid: isSlope(slope) }))],
  [
    'slope_from_ratings',
    calculation(z.object({ gender, bogey_rating: tenths, course_rating: tenths }), input => {
      const slope = slopeFromRatings(input.gender, input.bogey_rating, input.course_rating)
      return { unrounded: measured(slope), slope: roundHalfUp(slope) }
    }),
  ],
  [
    'par_candidates',
    calculation(z.object({ yards: z.number(), gender }), input => ({
      pars: parCandidates(input.yards, 'yards', input.gender),
    })),
  ],
  [
    'yards_to_metres',
    calculation(z.object({ yards: length }), ({ yards }) => {
      const metres = metresFromYards(yards)
      return { metres: measured(metres), rounded: roundHalfUp(metres) }
    }),
  ],
  [
    'metres_to_yards',
    calculation(z.object({ metres: length }), ({ metres }) => {
      const yards = yardsFromMetres(metres)
      return { yards: measured(yards), rounded: roundHalfUp(yards) }
    }),
  ],
]
