import { describe, expect, it } from 'vitest'
import { rulesRoundSaid } from '#core/plan/acts.ts'
import { isInRulesRound } from '#core/plan/rules-round.ts'
import type { BallId, LogId } from '#core/values/ids.ts'
import { type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'
import { makePlan } from '#tests/kit/player-plan.ts'

const alder = 'alder' as BallId
const fives = (count: number) => [{ ball: 'alder', holes: Array.from({ length: count }, () => 5) }]
const isIn = (change: Change): boolean => isInRulesRound(outingOfPlain(plainWith(change)), alder)

describe('a round under the Rules', () => {
  it.each([
    ['before the first score', { rules: true, scores: [] }, false],
    ['after it', { rules: true, scores: fives(1) }, true],
    ['with a hole to go', { rules: true, scores: fives(17) }, true],
    ['with every hole in', { rules: true, scores: fives(18) }, false],
    ['in practice', { rules: false, scores: fives(9) }, false],
  ])('%s', (_when, change, expected) => {
    expect(isIn(change)).toBe(expected)
  })

  it('is none for a ball that is not there', () => {
    expect(isInRulesRound(outingOfPlain(plainWith({ scores: fives(9) })), 'yew' as BallId)).toBe(false)
  })

  it('is said once, and taken back once', () => {
    const saturday = 'saturday' as LogId
    const [before, during] = [makePlan(), makePlan({ rulesRounds: [saturday] })]
    expect(rulesRoundSaid(before, saturday, true)).toEqual([{ key: 'rules-round/saturday', value: true }])
    expect(rulesRoundSaid(during, saturday, true)).toEqual([])
    expect(rulesRoundSaid(during, saturday, false)).toEqual([{ key: 'rules-round/saturday', value: null }])
    expect(rulesRoundSaid(before, saturday, false)).toEqual([])
  })
})
