import { describe, expect, it } from 'vitest'
import { playoffHandicap } from '#core/handicap/playoff-handicap.ts'

describe('strokes in a play-off (older text on ties, before 2019)', () => {
  it.each([
    [15, 9, 8],
    [13, 3, 2],
    [8, 3, 1],
    [18, 1, 1],
    [8, 1, 0],
  ])('are, off %i over %i holes, %i: a half counts in full', (handicap, holes, strokes) => {
    expect(playoffHandicap(handicap, holes)).toBe(strokes)
  })
})
