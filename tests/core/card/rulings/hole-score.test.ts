import { describe, expect, it } from 'vitest'
import { type ReturnedScore, ruleOnHoleScore } from '#core/card/rulings/hole-score.ts'

const low: ReturnedScore = { returned: 4, actual: 5, reason: 'other', isBeforeClose: true }

describe('a wrong hole score (Rules of Golf 3.3b(3), R&A and USGA, 2019 and 2023)', () => {
  it('stands when it is too high, and when it is right', () => {
    expect(ruleOnHoleScore({ ...low, returned: 6 })).toEqual({ code: 'stands', score: 6 })
    expect(ruleOnHoleScore({ ...low, returned: 5 })).toEqual({ code: 'stands', score: 5 })
  })

  it('disqualifies when it is too low or missing', () => {
    expect(ruleOnHoleScore(low)).toEqual({ code: 'disqualified' })
    expect(ruleOnHoleScore({ ...low, returned: null })).toEqual({ code: 'disqualified' })
  })

  it('gets the penalty strokes that a player did not know of, before the close', () => {
    const ruling = ruleOnHoleScore({ ...low, reason: 'unknown-penalty-stroke' })
    expect(ruling).toEqual({ code: 'committee-adds-penalty', score: 5 })
  })

  it('stands without them after the close (rule 20.2e(2))', () => {
    const ruling = ruleOnHoleScore({ ...low, reason: 'unknown-penalty-stroke', isBeforeClose: false })
    expect(ruling).toEqual({ code: 'stands', score: 4 })
  })

  it('disqualifies a player who was told of a possible penalty, or unsure (from memory)', () => {
    expect(ruleOnHoleScore({ ...low, reason: 'told-or-unsure-of-penalty' }).code).toBe('disqualified')
  })
})
