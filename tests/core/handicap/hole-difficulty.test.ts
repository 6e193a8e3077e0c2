import { expect, it } from 'vitest'
import { holeDifficultyTenths } from '#core/handicap/hole-difficulty.ts'

it('is 1.5 over par for a par four of 4.2 and 5.3 (Appendix E, an association’s reprint, 2020)', () => {
  expect(holeDifficultyTenths(42, 53, 4)).toBe(15)
})

it('is negative where both players make less than par', () => {
  expect(holeDifficultyTenths(45, 54, 5)).toBe(-1)
})
