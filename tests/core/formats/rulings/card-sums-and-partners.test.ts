import { describe, expect, it } from 'vitest'
import { firstPlaceOfLatePartner } from '#core/formats/rulings/late-partner.ts'
import { ruleOnTradedHoles } from '#core/formats/rulings/traded-holes.ts'
import { ruleOnWrittenSum } from '#core/formats/rulings/written-sum.ts'

it("the committee's sum counts, whatever is written (Rules of Golf 3.3b(4), 2023)", () => {
  expect(ruleOnWrittenSum(30)).toEqual({ code: 'no-penalty', counts: 30 })
})

it('holes cannot be traded (Rules of Golf, clarification 3.2b(1)/1)', () => {
  expect(ruleOnTradedHoles(true)).toBe('both-disqualified')
  expect(ruleOnTradedHoles(false)).toBe('stands-as-played')
})

describe('a late partner joins between holes (Rules of Golf 23.4)', () => {
  const onSecond = (partnerHasStarted: boolean, anyoneHasStarted: boolean) => ({
    place: 2,
    partnerHasStarted,
    anyoneHasStarted,
  })

  it('in stroke play before the other partner starts the hole', () => {
    expect(firstPlaceOfLatePartner('stroke-play', onSecond(true, true))).toBe(3)
    expect(firstPlaceOfLatePartner('stroke-play', onSecond(false, true))).toBe(2)
  })

  it('in a match before anybody in it does', () => {
    expect(firstPlaceOfLatePartner('match', onSecond(false, true))).toBe(3)
    expect(firstPlaceOfLatePartner('match', onSecond(false, false))).toBe(2)
  })
})
