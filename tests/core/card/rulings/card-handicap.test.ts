import { describe, expect, it } from 'vitest'
import { cardHandicapDuty, ruleOnCardHandicap } from '#core/card/rulings/card-handicap.ts'

describe('handicap on a card (Rules of Golf 3.3b(4), R&A and USGA)', () => {
  it('is the player’s duty in 2019, the committee’s in 2023 unless Local Rule L-2 hands it back', () => {
    expect(cardHandicapDuty('2019', false)).toBe('player')
    expect(cardHandicapDuty('2023', false)).toBe('committee')
    expect(cardHandicapDuty('2023', true)).toBe('player')
  })

  it('missing, or too high with effect, disqualifies a player whose duty it is', () => {
    expect(ruleOnCardHandicap('player', { onCard: null, correct: 11, affectsStrokes: true }).code).toBe('disqualified')
    expect(ruleOnCardHandicap('player', { onCard: 12, correct: 11, affectsStrokes: true }).code).toBe('disqualified')
  })

  it('too high without effect carries no penalty, too low stands', () => {
    const tooHigh = ruleOnCardHandicap('player', { onCard: 12, correct: 11, affectsStrokes: false })
    expect(tooHigh).toEqual({ code: 'no-penalty', netOff: 11 })
    const tooLow = ruleOnCardHandicap('player', { onCard: 10, correct: 11, affectsStrokes: true })
    expect(tooLow).toEqual({ code: 'no-penalty', netOff: 10 })
  })

  it.each([null, 10, 12])('on the card as %s is put right by a committee whose duty it is', onCard => {
    const ruling = ruleOnCardHandicap('committee', { onCard, correct: 11, affectsStrokes: true })
    expect(ruling).toEqual({ code: 'no-penalty', netOff: 11 })
  })
})
