import { expect } from 'vitest'
import type { Outcome } from '../fault.ts'

/** Nothing lost, nothing twice, nothing said that was not so, and something was at stake. */
export function expectWell({ acknowledged, lost, duplicated, falseMarks, words }: Outcome, atStake = 20): void {
  expect(words).toEqual([])
  expect({ lost, duplicated, falseMarks }).toEqual({ lost: 0, duplicated: 0, falseMarks: 0 })
  expect(acknowledged).toBeGreaterThan(atStake)
}
