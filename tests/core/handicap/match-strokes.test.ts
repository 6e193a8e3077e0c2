import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { matchStrokes, matchStrokesMethods } from '#core/handicap/match-strokes.ts'
import { fraction } from '#core/values/fraction.ts'

const anyHandicap = fc.integer({ min: -11_300, max: 67_800 }).map(numerator => fraction(numerator, 1130))

describe('match strokes (Rules of Handicapping Appendix C, R&A and USGA, 2020 and 2024)', () => {
  const pair = [fraction(124, 10), fraction(166, 10)]

  it('are the difference from the lowest playing handicap', () => {
    expect(matchStrokes('from-lowest-playing-handicap', pair, 100)).toEqual([0, 5])
  })

  it('are the unrounded difference, rounded once (Great Britain and Ireland, 2024, second-hand)', () => {
    expect(matchStrokes('difference-of-unrounded-course-handicaps', pair, 100)).toEqual([0, 4])
  })

  it('are the difference of whole course handicaps (club and county sheets, 2024, second-hand)', () => {
    expect(matchStrokes('difference-of-rounded-course-handicaps', pair, 100)).toEqual([0, 5])
  })

  it.each(matchStrokesMethods)('take nothing from a plus player: %s', method => {
    expect(matchStrokes(method, [fraction(10), fraction(-2)], 100)).toEqual([12, 0])
  })

  it.each(matchStrokesMethods)('of nobody are none: %s', method => {
    expect(matchStrokes(method, [], 90)).toEqual([])
  })

  it.each(matchStrokesMethods)('have a zero, no negatives, and do not depend on the order: %s', method => {
    fc.assert(
      fc.property(
        fc.array(anyHandicap, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 100 }),
        (handicaps, percent) => {
          const strokes = matchStrokes(method, handicaps, percent)
          expect(Math.min(...strokes)).toBe(0)
          expect(matchStrokes(method, handicaps.toReversed(), percent)).toEqual(strokes.toReversed())
        },
      ),
    )
  })
})
