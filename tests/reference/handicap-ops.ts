import * as z from 'zod/mini'
import {
  courseHandicap9,
  courseHandicap18,
  courseHandicap18WithoutRatingMinusPar,
  type HalfIndexMethod,
} from '#core/handicap/course-handicap.ts'
import { type MatchStrokesMethod, matchStrokes } from '#core/handicap/match-strokes.ts'
import { playingHandicap } from '#core/handicap/playing-handicap.ts'
import { allocateStrokes } from '#core/handicap/stroke-allocation.ts'
import { type Fraction, roundHalfUp } from '#core/values/fraction.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import { type Calculations, calculation, unrounded } from './calculation.ts'
import { decimal, percent, strokeIndexes, tenths, whole } from './published-inputs.ts'

const on18Holes = z.object({ handicap_index: tenths, slope: whole, course_rating: tenths, par: whole })
const on9Holes = z.object({ handicap_index: tenths, slope9: whole, course_rating9: tenths, par9: whole })
const allowance = { allowance_pct: percent }

const handicap18 = (input: z.output<typeof on18Holes>): Fraction =>
  courseHandicap18(input.handicap_index, {
    courseRatingTenths: input.course_rating,
    slope: input.slope,
    par: input.par,
  })

const handicap9 = (input: z.output<typeof on9Holes>, halfIndex: HalfIndexMethod): Fraction =>
  courseHandicap9(
    input.handicap_index,
    { courseRatingTenths: input.course_rating9, slope: input.slope9, par: input.par9 },
    halfIndex,
  )

const bothForms = (value: Fraction): Answer => ({ unrounded: unrounded(value), rounded: roundHalfUp(value) })

const bothRoundings = (courseHandicap: Fraction, allowancePercent: number): Record<string, Answer> => ({
  playing_handicap: playingHandicap(courseHandicap, allowancePercent, 'course-handicap-unrounded'),
  if_course_handicap_rounded_first: playingHandicap(courseHandicap, allowancePercent, 'course-handicap-rounded-first'),
})

/** Course and playing handicaps, and where strokes fall: sections a and c of the published figures. */
export const handicapOps: Calculations = [
  ['course_handicap_18', calculation(on18Holes, input => bothForms(handicap18(input)))],
  [
    'course_handicap_18_no_cr_par',
    calculation(z.object({ handicap_index: tenths, slope: whole }), input =>
      bothForms(courseHandicap18WithoutRatingMinusPar(input.handicap_index, input.slope)),
    ),
  ],
  [
    'course_handicap_9',
    calculation(on9Holes, input => ({
      half_index_rounded_to_tenth: bothForms(handicap9(input, 'half-index-to-tenth')),
      half_index_unrounded: bothForms(handicap9(input, 'half-index-unrounded')),
    })),
  ],
  [
    'playing_handicap',
    calculation(z.extend(on18Holes, allowance), input => {
      const full = handicap18(input)
      return { course_handicap_unrounded: unrounded(full), ...bothRoundings(full, input.allowance_pct) }
    }),
  ],
  [
    'playing_handicap_9',
    calculation(z.extend(on9Holes, allowance), input => {
      const full = handicap9(input, 'half-index-unrounded')
      return { course_handicap_9_unrounded: unrounded(full), ...bothRoundings(full, input.allowance_pct) }
    }),
  ],
  [
    'match_strokes',
    calculation(z.object({ course_handicaps_unrounded: z.array(decimal), ...allowance }), input => {
      const { course_handicaps_unrounded: handicaps, allowance_pct: percentage } = input
      const strokes = (method: MatchStrokesMethod): number[] => matchStrokes(method, handicaps, percentage)
      return {
        playing_handicaps: handicaps.map(each => playingHandicap(each, percentage, 'course-handicap-unrounded')),
        strokes_from_lowest_playing_handicap: strokes('from-lowest-playing-handicap'),
        strokes_difference_of_unrounded_course_handicaps: strokes('difference-of-unrounded-course-handicaps'),
        strokes_difference_of_rounded_course_handicaps: strokes('difference-of-rounded-course-handicaps'),
      }
    }),
  ],
  [
    'allocate_strokes',
    calculation(z.object({ playing_handicap: whole, stroke_index: strokeIndexes }), input => ({
      strokes_per_hole: allocateStrokes(input.playing_handicap, input.stroke_index),
    })),
  ],
]
