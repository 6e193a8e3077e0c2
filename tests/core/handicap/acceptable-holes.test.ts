import { describe, expect, it } from 'vitest'
import { acceptedAs, isEnoughForAnIndex, totalHoles } from '#core/handicap/acceptable-holes.ts'

describe('holes played (Rules of Handicapping 2.2)', () => {
  it.each([
    [18, 'eighteen-hole-score'],
    [14, 'eighteen-hole-score'],
    [13, 'nine-hole-score'],
    [7, 'nine-hole-score'],
    [6, 'not-acceptable'],
  ])('%i make, in 2020, %s (USGA)', (holes, expected) => {
    expect(acceptedAs('2020', holes, true)).toBe(expected)
  })

  it.each([
    [18, 'eighteen-hole-score'],
    [10, 'eighteen-hole-score'],
    [9, 'nine-hole-score'],
    [8, 'not-acceptable'],
  ])('%i make, in 2024, %s (a county’s page, second-hand)', (holes, expected) => {
    expect(acceptedAs('2024', holes, true)).toBe(expected)
  })

  it('need, between ten and seventeen in 2024, an Index for the expected score', () => {
    expect(acceptedAs('2024', 14, false)).toBe('not-acceptable')
    expect(acceptedAs('2024', 18, false)).toBe('eighteen-hole-score')
    expect(acceptedAs('2024', 9, false)).toBe('nine-hole-score')
  })
})

describe('a first Index (USGA, 2024)', () => {
  it('takes 54 holes in any mix', () => {
    expect(isEnoughForAnIndex([18, 9, 18, 9])).toBe(true)
    expect(isEnoughForAnIndex([18, 18, 9])).toBe(false)
    expect(totalHoles([18, 18, 9])).toBe(45)
  })
})
