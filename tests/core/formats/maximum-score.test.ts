import { describe, expect, it } from 'vitest'
import { cappedGross, maximumForHole } from '#core/formats/maximum-score.ts'

describe('maximum score (Rules of Golf 21.2, R&A and USGA, 2019 and 2023)', () => {
  it('caps a hole at twice par, net double bogey or a fixed score', () => {
    expect(maximumForHole({ kind: 'twice-par' }, 3, 1)).toBe(6)
    expect(maximumForHole({ kind: 'net-double-bogey' }, 4, 1)).toBe(7)
    expect(maximumForHole({ kind: 'net-double-bogey' }, 4, -1)).toBe(5)
    expect(maximumForHole({ kind: 'fixed', strokes: 10 }, 5, 0)).toBe(10)
  })

  it('counts the cap for more, and for no score', () => {
    expect([7, 8, 11, null].map(gross => cappedGross(gross, 8))).toEqual([7, 8, 8, 8])
  })
})
