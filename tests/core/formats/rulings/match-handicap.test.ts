import { describe, expect, it } from 'vitest'
import { ruleOnMatchHandicap } from '#core/formats/rulings/match-handicap.ts'

const tooHigh = { declared: 12, correct: 11, affectsStrokes: true, isCorrectedInTime: false }

describe('a wrong handicap in a match (Rules of Golf 3.2c(1), R&A and USGA, 2019 and 2023)', () => {
  it('too high with effect disqualifies, even before the hole it touches (12 for 11, clarification)', () => {
    expect(ruleOnMatchHandicap(tooHigh)).toEqual({ code: 'disqualified' })
  })

  it('too high without effect carries no penalty', () => {
    expect(ruleOnMatchHandicap({ ...tooHigh, affectsStrokes: false })).toEqual({ code: 'no-penalty', playsOff: 11 })
  })

  it('too low is what the player plays off', () => {
    expect(ruleOnMatchHandicap({ ...tooHigh, declared: 10 })).toEqual({ code: 'no-penalty', playsOff: 10 })
  })

  it('corrected in time is as if it had been right (second-hand)', () => {
    const inTime = { ...tooHigh, isCorrectedInTime: true }
    expect(ruleOnMatchHandicap(inTime)).toEqual({ code: 'no-penalty', playsOff: 11 })
    expect(ruleOnMatchHandicap({ ...inTime, declared: 10 })).toEqual({ code: 'no-penalty', playsOff: 11 })
  })
})
