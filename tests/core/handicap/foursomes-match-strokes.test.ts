import { describe, expect, it } from 'vitest'
import { foursomesMatchMethods, foursomesMatchStrokes } from '#core/handicap/foursomes-match-strokes.ts'
import { fraction } from '#core/values/fraction.ts'

const side = (...handicaps: number[]) => handicaps.map(each => fraction(each))

describe('strokes in a foursomes match (Rules of Handicapping, Appendix C, 2024)', () => {
  it.each(foursomesMatchMethods)('are ten between 6 + 10 and 15 + 20 (terms of a club): %s', method => {
    expect(foursomesMatchStrokes(method, side(6, 10), side(15, 20))).toEqual({ strokes: 10, receiver: 'second' })
    expect(foursomesMatchStrokes(method, side(15, 20), side(6, 10))).toEqual({ strokes: 10, receiver: 'first' })
  })

  it('differ by one where a half is rounded early', () => {
    // 8.5 makes 9 against 17; half of 17 makes 9.
    expect(foursomesMatchStrokes('from-rounded-side-handicaps', side(7, 10), side(14, 20)).strokes).toBe(8)
    expect(foursomesMatchStrokes('half-of-difference', side(7, 10), side(14, 20)).strokes).toBe(9)
  })

  it.each(foursomesMatchMethods)('are none between level sides: %s', method => {
    expect(foursomesMatchStrokes(method, side(7, 12), side(9, 10))).toEqual({ strokes: 0, receiver: null })
  })
})
