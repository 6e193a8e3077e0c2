import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { allowanceRoundings, playingHandicap } from '#core/handicap/playing-handicap.ts'
import { fraction } from '#core/values/fraction.ts'

describe('playing handicap (Rules of Handicapping 6.2a and Appendix C, R&A and USGA, 2024)', () => {
  it('rounds once, after the allowance', () => {
    expect(playingHandicap(fraction(123, 10), 95, 'course-handicap-unrounded')).toBe(12)
  })

  it('rounds the course handicap first where that is the setting (Great Britain and Ireland until March 2024)', () => {
    expect(playingHandicap(fraction(123, 10), 95, 'course-handicap-rounded-first')).toBe(11)
  })

  it('never takes a plus player away from zero', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1000, max: -1 }),
        fc.integer({ min: 0, max: 100 }),
        fc.constantFrom(...allowanceRoundings),
        (tenths, percent, rounding) => {
          const playing = playingHandicap(fraction(tenths, 10), percent, rounding)
          expect(playing).toBeLessThanOrEqual(0)
          expect(playing).toBeGreaterThanOrEqual(Math.floor(tenths / 10 + 0.5))
        },
      ),
    )
  })
})
