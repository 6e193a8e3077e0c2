import { unreachable } from '#core/values/assert.ts'
import { type Fraction, fraction, percentOf, plus, roundHalfUp } from '#core/values/fraction.ts'

/** Forms of play by how their results are recorded, which decides whether a difference in par between tees counts. */
export const teeParForms = ['stroke-play', 'maximum-score', 'match-play', 'stableford', 'par-bogey'] as const
export type TeeParForm = (typeof teeParForms)[number]

/**
 * Strokes added for a tee whose par differs from the field's baseline; negative below the baseline. Only results recorded
 * as strokes need it: against par, the target is par on every tee. The baseline is the lowest par of the field, or the
 * par that most of it plays.
 * Source: Rules of Handicapping, rule 6.2b; USGA and R&A; 2020 and 2024 (where Course Handicaps hold rating minus par).
 * The other baseline: the Danish union's text of 6.2b, 2021.
 */
export const teeParAddition = (form: TeeParForm, ownPar: number, baselinePar: number): number =>
  isAgainstPar(form) ? 0 : ownPar - baselinePar

/** Whether a form's results are recorded against par and not as strokes. */
export function isAgainstPar(form: TeeParForm): boolean {
  switch (form) {
    case 'stroke-play':
    case 'maximum-score':
    case 'match-play':
      return false
    case 'stableford':
    case 'par-bogey':
      return true
    default:
      return unreachable(form)
  }
}

/** Whether the difference in par goes in after the allowance or is part of what the allowance is taken of. */
export const teeParOrders = ['after-allowance', 'before-allowance'] as const
export type TeeParOrder = (typeof teeParOrders)[number]

/**
 * Playing Handicap in whole strokes with the difference in par between tees, a half upward.
 * Source, after: Rules of Handicapping, rule 6.2b; USGA and R&A; 2020 and 2024. Before: a club's sheet for four-ball
 * matches, April 2024, second-hand.
 */
export function playingHandicapAcrossTees(
  courseHandicap: Fraction,
  allowancePercent: number,
  addition: number,
  order: TeeParOrder,
): number {
  switch (order) {
    case 'after-allowance':
      return roundHalfUp(percentOf(courseHandicap, allowancePercent)) + addition
    case 'before-allowance':
      return roundHalfUp(percentOf(plus(courseHandicap, fraction(addition)), allowancePercent))
    default:
      return unreachable(order)
  }
}
