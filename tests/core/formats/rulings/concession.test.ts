import { describe, expect, it } from 'vitest'
import { concededThings, ruleOnConcession } from '#core/formats/rulings/concession.ts'

describe('concessions (Rules of Golf 3.2b, R&A and USGA, 2019 and 2023)', () => {
  it.each(concededThings)('of a %s by the player are final', what => {
    expect(ruleOnConcession({ what, by: 'player', isHoleDecided: false, isMatchDecided: false })).toEqual({
      isValid: true,
      isFinal: true,
    })
  })

  it.each(concededThings)('of a %s by a caddie are none', what => {
    expect(ruleOnConcession({ what, by: 'caddie', isHoleDecided: false, isMatchDecided: false })).toEqual({
      isValid: false,
      reason: 'by-caddie',
    })
  })

  it('of a hole already decided are void; the match can still be given', () => {
    const late = { by: 'player', isHoleDecided: true, isMatchDecided: false } as const
    expect(ruleOnConcession({ ...late, what: 'hole' })).toEqual({ isValid: false, reason: 'hole-already-decided' })
    expect(ruleOnConcession({ ...late, what: 'match' }).isValid).toBe(true)
  })

  it.each(concededThings)('of a %s are void once the match is decided', what => {
    expect(ruleOnConcession({ what, by: 'player', isHoleDecided: true, isMatchDecided: true })).toEqual({
      isValid: false,
      reason: 'match-already-decided',
    })
  })
})
