import { describe, expect, test } from 'vitest'
import { holeAhead, planOfHole } from '#client/screens/hole/own/own-plan.ts'
import { isForOthersToo, type Whose } from '#client/screens/hole/whose-scores.ts'
import { must } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import { outingOfPlain, plainWith } from '../../../kit/plain-outing.ts'
import { makePlan } from '../../../kit/player-plan.ts'

const outing = outingOfPlain(plainWith({ scores: [] }))
const group = must([...outing.groups.values()][0], 'the outing has a group')
const alder = 'alder' as BallId
const whose = (change: Partial<Whose>): Whose => ({ mode: 'mine', ball: alder, marks: null, ...change })

describe('a hole ahead', () => {
  test('has the length of the player’s own tee, in the player’s own unit', () => {
    expect(holeAhead(outing, alder, { hole: 2, lap: 1 }, makePlan())).toEqual({ par: 5, length: 492 })
    // 492 yd is 449.88 m.
    const metres = holeAhead(outing, alder, { hole: 2, lap: 1 }, makePlan({ unit: 'metres' }))
    expect(metres).toEqual({ par: 5, length: 450 })
  })

  test('has none where nobody typed it in, or no ball is the phone’s own; then nothing is said', () => {
    const ahead = holeAhead(outing, null, { hole: 2, lap: 1 }, makePlan())
    expect(ahead).toEqual({ par: 5, length: null })
    expect(planOfHole(makePlan(), ahead)).toBeNull()
    expect(holeAhead(outing, alder, { hole: 19, lap: 1 }, makePlan())).toBeNull()
  })
})

describe('what is private stays behind a tap', () => {
  test.each([
    ['on a phone that scores for all', { mode: 'all' }, true],
    ['on a phone that keeps a marker’s record', { marks: 'birch' as BallId }, true],
    ['on a phone that is nobody’s', { ball: null }, true],
    ['on a phone of another group', { ball: 'elm' as BallId }, true],
    ['not on a player’s own', {}, false],
  ] as const)('%s', (_, change, isShut) => {
    expect(isForOthersToo(whose(change), group)).toBe(isShut)
  })

  test('not on the phone of a player who goes round alone', () => {
    expect(isForOthersToo(whose({ mode: 'all' }), { ...group, balls: [alder] })).toBe(false)
  })
})
