import { expect, it } from 'vitest'
import { figuresGiven, territoriesNotCovered } from '#core/handicap/coverage.ts'

it('names what is not covered and what is given rather than computed', () => {
  expect(territoriesNotCovered).toEqual(['Australia'])
  expect(figuresGiven).toEqual(['expected-score', 'playing-conditions'])
})
