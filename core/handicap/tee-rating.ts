import type { Ratings } from './course-handicap.ts'
import { isAgainstPar, type TeeParForm } from './tee-par.ts'

/**
 * What a tee is harder by, in tenths of a stroke and without a zero of its own: its Course Rating where results are
 * recorded as strokes, its Course Rating minus par where they are recorded against par. Where Course Handicaps leave out
 * rating minus par, whoever plays from a tee with a larger figure than another has the difference added to the Playing
 * Handicap, rounded with a half upward.
 * Source: Great Britain and Ireland, November 2020 to March 2024: that players from several tees had an adjustment by
 * Course Rating was read second-hand, in a trade page on the change; the figures of either form are from memory.
 */
export const teeRatingTenths = (form: TeeParForm, { courseRatingTenths, par }: Ratings): number =>
  isAgainstPar(form) ? courseRatingTenths - 10 * par : courseRatingTenths
