import { describe, expect, it } from 'vitest'
import { playingHandicapAcrossTees, teeParAddition } from '#core/handicap/tee-par.ts'
import { fraction } from '#core/values/fraction.ts'

describe('different par from different tees (Rules of Handicapping 6.2b, USGA, 2020 and 2024)', () => {
  it.each(['stroke-play', 'maximum-score', 'match-play'] as const)('is added in %s', form => {
    expect(teeParAddition(form, 73, 71)).toBe(2)
    expect(teeParAddition(form, 71, 71)).toBe(0)
  })

  it.each(['stableford', 'par-bogey'] as const)('does not matter in %s, where the target is par on every tee', form => {
    expect(teeParAddition(form, 73, 71)).toBe(0)
  })

  it('is taken off below a higher baseline (Danish union, 2021)', () => {
    expect(teeParAddition('stroke-play', 71, 72)).toBe(-1)
  })

  it('goes in after the allowance, or inside it (a club sheet, 2024, second-hand)', () => {
    // 90 % of 10.3 is 9.27, and of 12.3 it is 11.07.
    expect(playingHandicapAcrossTees(fraction(103, 10), 90, 2, 'after-allowance')).toBe(11)
    expect(playingHandicapAcrossTees(fraction(103, 10), 90, 2, 'before-allowance')).toBe(11)
    // 90 % of 4 is 3.6, and of 9 it is 8.1.
    expect(playingHandicapAcrossTees(fraction(4), 90, 5, 'after-allowance')).toBe(9)
    expect(playingHandicapAcrossTees(fraction(4), 90, 5, 'before-allowance')).toBe(8)
  })
})
