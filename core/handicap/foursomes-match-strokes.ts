import { unreachable } from '#core/values/assert.ts'
import { type Fraction, fraction, minus, percentOf, plus, roundHalfUp, zero } from '#core/values/fraction.ts'
import { sideAllowances } from './allowance.ts'
import { teamHandicap } from './team-handicap.ts'

/** Whether each side's handicap is whole before the two are compared. */
export const foursomesMatchMethods = ['from-rounded-side-handicaps', 'half-of-difference'] as const
export type FoursomesMatchMethod = (typeof foursomesMatchMethods)[number]

/** Strokes that one of two foursomes sides receives from the other. */
export interface SideStrokes {
  readonly strokes: number
  /** `null` when the sides are level. */
  readonly receiver: 'first' | 'second' | null
}

/**
 * Strokes in a foursomes match between two sides, each given by its partners' Course Handicaps.
 * Source, each side rounded: Rules of Handicapping, Appendix C; USGA and R&A; 2024. Half of the difference, rounded once:
 * a county's page on the guidance for Great Britain and Ireland, 2024, second-hand.
 */
export function foursomesMatchStrokes(
  method: FoursomesMatchMethod,
  first: readonly Fraction[],
  second: readonly Fraction[],
): SideStrokes {
  switch (method) {
    case 'from-rounded-side-handicaps': {
      const whole = (side: readonly Fraction[]): number => roundHalfUp(teamHandicap(side, sideAllowances.foursomes))
      return sideStrokes(fraction(whole(first) - whole(second)))
    }
    case 'half-of-difference':
      return sideStrokes(percentOf(minus(first.reduce(plus, zero), second.reduce(plus, zero)), 50))
    default:
      return unreachable(method)
  }
}

/** The lower side plays off zero, so the size of the lead is rounded, whoever has it. */
function sideStrokes(lead: Fraction): SideStrokes {
  const strokes = roundHalfUp(lead.numerator < 0 ? minus(zero, lead) : lead)
  return { strokes, receiver: strokes === 0 ? null : lead.numerator > 0 ? 'first' : 'second' }
}
