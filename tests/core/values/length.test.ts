import { expect, it } from 'vitest'
import { fraction } from '#core/values/fraction.ts'
import { metresFromYards, yardsFromMetres, yardsPerUnit } from '#core/values/length.ts'

it('a yard is 0.9144 m exactly (international yard and pound agreement, 1959), there and back', () => {
  expect(metresFromYards(fraction(10_000))).toEqual(fraction(9144))
  expect(yardsFromMetres(fraction(9144))).toEqual(fraction(10_000))
  expect(yardsFromMetres(metresFromYards(fraction(411)))).toEqual(fraction(411))
})

it('a sum goes on in yards with what a metre has of them, not rounded', () => {
  expect(yardsPerUnit('yards')).toBe(1)
  expect(yardsPerUnit('metres')).toBe(10_000 / 9144)
})
