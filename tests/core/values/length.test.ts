import { expect, it } from 'vitest'
import { fraction } from '#core/values/fraction.ts'
import { metresFromYards, yardsFromMetres } from '#core/values/length.ts'

it('a yard is 0.9144 m exactly (international yard and pound agreement, 1959), there and back', () => {
  expect(metresFromYards(fraction(10_000))).toEqual(fraction(9144))
  expect(yardsFromMetres(fraction(9144))).toEqual(fraction(10_000))
  expect(yardsFromMetres(metresFromYards(fraction(411)))).toEqual(fraction(411))
})
