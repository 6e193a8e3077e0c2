import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sideAllowances } from '#core/handicap/allowance.ts'
import { teamHandicap, teamHandicapAcrossTees } from '#core/handicap/team-handicap.ts'
import { fraction, roundHalfUp } from '#core/values/fraction.ts'

const wholes = (...handicaps: number[]) => handicaps.map(each => fraction(each))

describe('handicap of a side with one ball (Rules of Handicapping, Appendix C, 2024)', () => {
  it('takes half of the sum in foursomes, rounded once (terms of a club: 15 and 20 make 18)', () => {
    const handicap = teamHandicap(wholes(15, 20), sideAllowances.foursomes)
    expect(handicap).toEqual(fraction(35, 2))
    expect(roundHalfUp(handicap)).toBe(18)
  })

  it('moves a plus side up', () => {
    expect(roundHalfUp(teamHandicap(wholes(-3, 0), sideAllowances.foursomes))).toBe(-1)
  })

  it('gives the largest share to the lowest handicap, whoever is named first', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -5, max: 54 }), { minLength: 4, maxLength: 4 }), handicaps => {
        const shares = sideAllowances['scramble-of-4']
        const ascending = [...handicaps].sort((a, b) => a - b)
        expect(teamHandicap(wholes(...handicaps), shares)).toEqual(teamHandicap(wholes(...ascending), shares))
      }),
    )
    expect(teamHandicap(wholes(8, -2), sideAllowances.greensomes)).toEqual(fraction(2))
  })

  it('stops on a share missing', () => {
    expect(() => teamHandicap(wholes(1, 2, 3), sideAllowances.foursomes)).toThrow('one share for each partner')
  })
})

describe('one ball across tees (club pages, 2024, second-hand)', () => {
  const partners = [
    { indexTenths: 100, ratings: { courseRatingTenths: 710, slope: 113, par: 71 } },
    { indexTenths: 200, ratings: { courseRatingTenths: 730, slope: 113, par: 73 } },
  ]

  it('adds the difference in par before the shares: 10 and 20 + 2', () => {
    const handicap = teamHandicapAcrossTees({ method: 'par-difference-in-shares' }, partners, sideAllowances.foursomes)
    expect(handicap).toEqual(fraction(16))
  })

  it("takes one tee's par for everybody: 10 - 2 and 20", () => {
    const handicap = teamHandicapAcrossTees({ method: 'one-tee-par', par: 73 }, partners, sideAllowances.foursomes)
    expect(handicap).toEqual(fraction(14))
  })

  it('comes to the same where that tee has the lowest par', () => {
    expect(teamHandicapAcrossTees({ method: 'one-tee-par', par: 71 }, partners, sideAllowances.greensomes)).toEqual(
      teamHandicapAcrossTees({ method: 'par-difference-in-shares' }, partners, sideAllowances.greensomes),
    )
  })
})
