import { describe, expect, it } from 'vitest'
import { ballPlaceAt, mostLikelyScores } from '#core/handicap/most-likely-score.ts'

describe('most likely score (Rules of Handicapping 3.3 and clarification 3.3/1, 2024)', () => {
  it('adds one on the green within five feet', () => {
    expect(mostLikelyScores(3, 'on-green-within-5-feet')).toEqual([4])
  })

  it('adds two or three up to 20 yards: four strokes and 15 yards make 6 or 7', () => {
    expect(mostLikelyScores(4, ballPlaceAt(15, 'yards'))).toEqual([6, 7])
  })

  it('adds three or four beyond', () => {
    expect(mostLikelyScores(2, 'further')).toEqual([5, 6])
  })

  it.each([
    ['yards', 20],
    ['metres', 20],
    ['feet', 60],
  ] as const)('counts %s up to %d as near', (unit, distance) => {
    expect(ballPlaceAt(distance, unit)).toBe('within-20-yards')
    expect(ballPlaceAt(distance + 1, unit)).toBe('further')
  })
})
