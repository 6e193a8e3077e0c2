import { assert, must, unreachable } from '#core/values/assert.ts'
import { compareFractions, type Fraction, fraction, percentOf, plus, zero } from '#core/values/fraction.ts'
import { courseHandicap18, type Ratings } from './course-handicap.ts'
import { teeParAddition } from './tee-par.ts'

/**
 * Handicap of a side that plays one ball, unrounded: each partner's share of the Course Handicap, the lowest first,
 * whoever is named first. Negative is a plus side. Rounded once, after the sum.
 * Source: Rules of Handicapping, Appendix C and rule 6.2a; USGA and R&A; 2024.
 */
export function teamHandicap(courseHandicaps: readonly Fraction[], percentsLowToHigh: readonly number[]): Fraction {
  assert(courseHandicaps.length === percentsLowToHigh.length, 'teamHandicap: one share for each partner')
  return [...courseHandicaps]
    .sort(compareFractions)
    .map((handicap, at) => percentOf(handicap, must(percentsLowToHigh[at], 'teamHandicap: a share')))
    .reduce(plus, zero)
}

/** How partners from different tees share one ball: the two published practices. */
export type MixedTees =
  /** One tee's par, and its stroke index, in everybody's Course Handicap; nothing is added. */
  | { readonly method: 'one-tee-par'; readonly par: number }
  /** Everybody's own par; the difference to the lowest par is added before the shares are taken. */
  | { readonly method: 'par-difference-in-shares' }

/** One partner: Handicap Index in tenths and the ratings of the tee played. */
export interface PartnerOnTee {
  readonly indexTenths: number
  readonly ratings: Ratings
}

/**
 * Handicap of a side that plays one ball from different tees, unrounded.
 * Source: club pages, 2024, second-hand; no rule of a governing body was found for it.
 */
export function teamHandicapAcrossTees(
  mixedTees: MixedTees,
  partners: readonly PartnerOnTee[],
  percentsLowToHigh: readonly number[],
): Fraction {
  return teamHandicap(courseHandicapsAcrossTees(mixedTees, partners), percentsLowToHigh)
}

function courseHandicapsAcrossTees(mixedTees: MixedTees, partners: readonly PartnerOnTee[]): Fraction[] {
  switch (mixedTees.method) {
    case 'one-tee-par':
      return partners.map(({ indexTenths, ratings }) =>
        courseHandicap18(indexTenths, { ...ratings, par: mixedTees.par }),
      )
    case 'par-difference-in-shares': {
      const lowestPar = Math.min(...partners.map(({ ratings }) => ratings.par))
      return partners.map(({ indexTenths, ratings }) => {
        const addition = teeParAddition('stroke-play', ratings.par, lowestPar)
        return plus(courseHandicap18(indexTenths, ratings), fraction(addition))
      })
    }
    default:
      return unreachable(mixedTees)
  }
}
