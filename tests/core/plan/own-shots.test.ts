import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { emptyLog, foldOps, type LogState } from '#core/log/fold.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { clubPutIn, partSwingSaid, shotMeasured, spreadSaid, strikeChosen, unitChosen } from '#core/plan/acts.ts'
import { bagOf } from '#core/plan/bag.ts'
import type { Club } from '#core/plan/clubs.ts'
import { holePlan } from '#core/plan/hole-plan.ts'
import { bothMeasured, carryWithShots, measuredFrom, ownShotsOf, spreadOfShots } from '#core/plan/own-shots.ts'
import type { Plan } from '#core/plan/plan.ts'
import { planOf } from '#core/plan/plan-of.ts'
import { measuredOf } from '#core/plan/spread/own-figures.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { isKnownPlayerValue } from '#shared/player-facts.ts'
import { holds } from '#tests/kit/property.ts'

function createLog() {
  let state: LogState = emptyLog
  let n = 0
  const plan = (): Plan => planOf(state, isKnownPlayerValue)
  const write = (factsOf: (plan: Plan) => readonly NewFact[]): void => {
    n += 1
    const facts = factsReplacing(state, factsOf(plan()))
    const head = { log: 'own' as LogId, scope: null, device: 'phone' as DeviceId, at: 0, act: 'bag changed' }
    state = foldOps(state, [{ ...head, n, tick: n, facts }])
  }
  return { plan, write }
}

const carryOf = ({ bag }: Plan, club: Club) => bag.clubs.find(each => each.club === club)

describe('shots that a player measured', () => {
  holds(
    'two sets as one are as if they had been measured together',
    fc.tuple(
      fc.array(fc.integer({ min: 50, max: 300 }), { minLength: 1 }),
      fc.array(fc.integer({ min: 50, max: 300 })),
    ),
    ([first, second]) => {
      const [both, all] = [bothMeasured(measuredOf(first), measuredOf(second)), measuredOf([...first, ...second])]
      expect(both.shots).toBe(all.shots)
      expect(both.mean).toBeCloseTo(all.mean, 6)
      expect(both.squares).toBeCloseTo(all.squares, 3)
    },
  )

  it('give mean, count and spread; a spread that was typed comes out again', () => {
    // By hand: 140, 145 and 150 have the mean 145 and the standard deviation 5.
    expect(measuredOf([140, 145, 150])).toMatchObject({ shots: 3, mean: 145 })
    expect(spreadOfShots(measuredOf([140, 145, 150]))).toBeCloseTo(5, 9)
    expect(spreadOfShots(measuredFrom(145, { spread: 8, shots: 20 }))).toBeCloseTo(8, 9)
    expect(spreadOfShots(measuredOf([145]))).toBeNull()
  })

  it('move a number the more, the more of them there are, and never past their mean', () => {
    const usual = 150
    const moved = [1, 3, 10, 100].map(n => carryWithShots('iron-7', usual, measuredOf(Array(n).fill(140)), 'yards'))
    expect(moved).toEqual(moved.toSorted((a, b) => b - a))
    expect(moved[0]).toBeLessThan(usual)
    expect(moved.at(-1)).toBeGreaterThanOrEqual(140)
    // With a prior of 6 % of the carry and a usual spread near 13 yards, half the weight is at two to three shots.
    const half = carryWithShots('iron-7', usual, measuredOf([140, 140, 140]), 'yards')
    expect(half).toBeGreaterThan(142)
    expect(half).toBeLessThan(147)
  })
})

describe('a bag with own shots', () => {
  it('a typed number is moved and stays what it was without them; nothing measured changes nothing', () => {
    const log = createLog()
    log.write(plan => clubPutIn(plan, 'iron-7', 150))
    const before = carryOf(log.plan(), 'iron-7')
    expect(before).toEqual({ club: 'iron-7', carry: 150, usual: 150, isEstimated: false })
    for (const shot of ['a', 'b', 'c']) log.write(plan => shotMeasured(plan, 'iron-7', shot, 140))
    // By hand: a prior of 9 yards about 150; three shots at 140, each within 12.2 yards, weigh 62 in 100: 143.8.
    expect(carryOf(log.plan(), 'iron-7')).toMatchObject({ carry: 144, usual: 150, isEstimated: false })
    log.write(plan => shotMeasured(plan, 'iron-7', 'a', null))
    expect(log.plan().measured.get('iron-7')?.shots).toBe(2)
  })

  it('shots alone are a number: a club that is measured counts among the three', () => {
    const log = createLog()
    log.write(plan => clubPutIn(plan, 'driver', 210))
    log.write(plan => clubPutIn(plan, 'sand-wedge', 80))
    expect(carryOf(log.plan(), 'iron-9')).toBeUndefined()
    log.write(plan => shotMeasured(plan, 'iron-7', 'a', 140))
    expect(carryOf(log.plan(), 'iron-7')).toMatchObject({ carry: 140, isEstimated: false })
    expect(carryOf(log.plan(), 'iron-9')?.isEstimated).toBe(true)
  })

  it('the first shot of an empty bag brings the proposed clubs, as the first number does', () => {
    const log = createLog()
    log.write(plan => shotMeasured(plan, 'iron-7', 'a', 140))
    expect(log.plan().said.has('driver')).toBe(true)
  })

  it('a spread is kept with its number, and shots are told in yards to whoever judges them', () => {
    const log = createLog()
    log.write(() => unitChosen('metres'))
    log.write(plan => clubPutIn(plan, 'iron-7', 130))
    log.write(plan => spreadSaid(plan, 'iron-7', { spread: 9, shots: 20 }))
    const own = ownShotsOf(log.plan()).get('iron-7')
    // International yard and pound agreement, 1959: 130 m are 142.17 yards.
    expect(own?.carry.mean).toBeCloseTo(142.17, 2)
    expect(own?.carry.shots).toBe(20)
    expect(carryOf(log.plan(), 'iron-7')?.carry).toBe(130)
    log.write(plan => spreadSaid(plan, 'iron-7', null))
    expect(ownShotsOf(log.plan()).size).toBe(0)
  })

  it('good strikes are meant unless the player says averages', () => {
    const log = createLog()
    expect(log.plan().strike).toBe('good-strike')
    log.write(() => strikeChosen('average'))
    expect(log.plan().strike).toBe('average')
  })
})

describe('part swings', () => {
  it('are shots with a number of their own, for what is left and not for the ladder', () => {
    const log = createLog()
    for (const [club, carry] of [
      ['driver', 215],
      ['iron-7', 145],
      ['sand-wedge', 85],
    ] as const) {
      log.write(plan => clubPutIn(plan, club, carry))
    }
    const before = log.plan().bag.clubs
    log.write(plan => partSwingSaid(plan, 'sand-wedge', 'half', 45))
    expect(log.plan().bag.clubs).toEqual(before)
    expect(log.plan().bag.parts).toEqual([
      { club: 'sand-wedge', carry: 45, usual: 45, isEstimated: false, part: 'half' },
    ])
    const plan = holePlan(log.plan(), 3, 45)
    expect(plan).toMatchObject({ kind: 'green', approach: { swing: { club: { part: 'half' } } } })
    log.write(now => partSwingSaid(now, 'sand-wedge', 'half', null))
    expect(log.plan().bag.parts).toEqual([])
  })

  it('leave the bag with their club', () => {
    const parts = new Map([['lob-wedge' as const, new Map([['half' as const, 30]])]])
    expect(bagOf(new Map([['iron-7', 145]]), { unit: 'yards', measured: new Map(), parts }).parts).toEqual([])
  })
})
