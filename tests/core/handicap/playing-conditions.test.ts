import { describe, expect, it } from 'vitest'
import { isPlayingConditions, playingConditionsFromSample } from '#core/handicap/playing-conditions.ts'

describe('playing conditions (Rules of Handicapping 5.6, R&A and USGA, 2020 and 2024)', () => {
  it('are one of five figures', () => {
    expect([-2, -1, 0, 0.5, 1, 2, 3, 4].filter(isPlayingConditions)).toEqual([-1, 0, 1, 2, 3])
  })

  it('are zero below eight acceptable scores, and never computed from there on', () => {
    expect(playingConditionsFromSample(7)).toBe(0)
    expect(playingConditionsFromSample(8)).toBeNull()
  })
})
