import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { approachOf, pins } from '#core/plan/approach.ts'
import { clubsOffTheGround, enoughNumbers, longestOf } from '#core/plan/bag.ts'
import type { Club } from '#core/plan/clubs.ts'
import { holePlan } from '#core/plan/hole-plan.ts'
import { layUpFrom } from '#core/plan/lay-up.ts'
import { lowestThatClears, recoverySteps } from '#core/plan/recovery.ts'
import { shotNote } from '#core/plan/shot-note.ts'
import { anyPlan, makePlan } from '../../kit/player-plan.ts'
import { holds } from '../../kit/property.ts'

const plan = makePlan()
const among = clubsOffTheGround(plan.bag)

/** The values of the habits are common practice, not of any published table. */
describe('a lay-up', () => {
  it('leaves the favourite number: 245 to go with favourite 100 asks for a shot of 145 (common practice)', () => {
    expect(layUpFrom(245, 100, among)).toMatchObject({
      kind: 'to-favourite',
      shot: 145,
      swing: { club: { club: 'iron-7', carry: 145 }, hold: 'full' },
      leaves: 100,
    })
  })

  it('says what the nearest club leaves where none fits, the shorter of two', () => {
    // Between the 7 iron at 145 and the 8 iron at 135, estimated.
    expect(layUpFrom(240, 100, among)).toMatchObject({ shot: 140, swing: { club: { carry: 135 } }, leaves: 105 })
    expect(layUpFrom(241, 100, among)).toMatchObject({ shot: 141, swing: { club: { carry: 145 } }, leaves: 96 })
  })

  it('is part of a swing where no club is that short, and leaves the number all the same', () => {
    expect(layUpFrom(130, 100, among)).toMatchObject({
      shot: 30,
      swing: { club: { club: 'sand-wedge' }, hold: 'part' },
      leaves: 100,
    })
  })

  it('goes as far as the bag does where the number is out of reach', () => {
    expect(layUpFrom(330, 100, among)).toMatchObject({
      kind: 'as-far-as-it-goes',
      club: { club: 'wood-3' },
      leaves: 135,
    })
  })

  it('asks for the number where none is chosen, and for nothing inside it', () => {
    expect(layUpFrom(245, null, among)).toEqual({ kind: 'no-number' })
    expect(layUpFrom(100, 100, among)).toEqual({ kind: 'inside' })
  })
})

describe('a shot at the green', () => {
  it.each(pins)('from 140 and from 175 says the middle, with a %s pin too (common practice)', pin => {
    expect(approachOf(plan, 140, pin, among)).toMatchObject({ aim: 'middle', plays: 140 })
    expect(approachOf(plan, 175, pin, among)).toMatchObject({ aim: 'middle', plays: 175 })
  })

  it('plays 123 for a front pin at 118 with five past (common practice)', () => {
    expect(approachOf(plan, 118, 'front', among)).toMatchObject({ aim: 'past', plays: 123 })
  })

  it('plays 113 for a back pin at 118 with five short, on the same club gripped down (common practice)', () => {
    const back = approachOf(plan, 118, 'back', among)
    expect(back).toMatchObject({ aim: 'short', plays: 113, swing: { hold: 'gripped-down' } })
    expect(back.swing?.club).toEqual(approachOf(plan, 118, 'middle', among).swing?.club)
  })

  it('plays the number itself where the habit is off', () => {
    const off = makePlan({ habits: { ...plan.habits, middle: false, 'pin-depth': false } })
    expect(approachOf(off, 118, 'back', among)).toMatchObject({ aim: 'number', plays: 118 })
    expect(approachOf(off, 175, 'back', among)).toMatchObject({ aim: 'number', plays: 175 })
  })

  it('goes by the numbers that the player chose', () => {
    const own = makePlan({ numbers: { 'mid-iron-border': 110, 'past-front-pin': 8, 'short-of-back-pin': 3 } })
    expect(approachOf(own, 118, 'front', among)).toMatchObject({ aim: 'middle' })
    expect(approachOf(own, 100, 'front', among)).toMatchObject({ plays: 108 })
    expect(approachOf(own, 100, 'back', among)).toMatchObject({ plays: 97 })
  })

  it('has an answer without a bag', () => {
    const bare = makePlan({ said: new Map() })
    expect(shotNote(bare, 118, 'front')).toEqual({
      kind: 'green',
      approach: { aim: 'past', plays: 123, swing: null },
    })
  })
})

describe('a hole before it is played', () => {
  it('says lay up on a par 5 whose green no club reaches (common practice)', () => {
    // 500 less the driver's 215 leaves 285; the 3 wood carries 195.
    expect(holePlan(plan, 5, 500)).toMatchObject({
      kind: 'lay-up',
      tee: { club: 'driver' },
      left: 285,
      layUp: { kind: 'to-favourite', shot: 185, leaves: 90 },
    })
  })

  it('goes for a green that a club reaches', () => {
    expect(holePlan(plan, 4, 380)).toMatchObject({
      kind: 'green',
      tee: { club: 'driver' },
      left: 165,
      approach: { aim: 'middle' },
    })
    expect(holePlan(plan, 3, 145)).toMatchObject({
      kind: 'green',
      tee: null,
      approach: { swing: { club: { club: 'iron-7' } } },
    })
  })

  it('lays up on a par 3 and a par 4 out of reach, and keeps the driver for the tee', () => {
    expect(holePlan(plan, 3, 225)).toMatchObject({ kind: 'lay-up', tee: null, left: 225, layUp: { shot: 125 } })
    expect(holePlan(plan, 3, 210)).toMatchObject({ kind: 'green', approach: { swing: { club: { club: 'driver' } } } })
    expect(holePlan(plan, 4, 425)).toMatchObject({ kind: 'lay-up', left: 210, layUp: { shot: 110 } })
  })

  it('asks for three numbers first, and keeps still about a lay-up that is switched off', () => {
    expect(holePlan(makePlan({ said: new Map<Club, number | null>([['iron-7', 145]]) }), 5, 500)).toEqual({
      kind: 'few-clubs',
    })
    const off = makePlan({ habits: { ...plan.habits, 'lay-up': false } })
    expect(holePlan(off, 5, 500)).toMatchObject({ kind: 'lay-up', layUp: null })
  })
})

describe('from the trees', () => {
  it('takes the lowest-lofted club that clears, and no wood (common practice)', () => {
    expect(lowestThatClears(plan.bag, () => true)?.club).toBe('iron-5')
    expect(lowestThatClears(plan.bag, ({ club }) => club !== 'iron-5' && club !== 'iron-6')?.club).toBe('iron-7')
    expect(lowestThatClears(plan.bag, () => false)).toBeNull()
  })

  it('has its routine in order: out first, then as far down as is safe (common practice)', () => {
    expect(recoverySteps.slice(0, 5)).toEqual(['grip-down', 'ball-back', 'hands-ahead', 'weight-forward', 'finish-low'])
    expect(recoverySteps.slice(5)).toEqual(['out-first', 'far-down'])
  })
})

const distance = fc.integer({ min: 1, max: 400 })
const shot = fc.record({
  plan: anyPlan,
  pin: fc.constantFrom(...pins),
  distance,
  more: fc.integer({ min: 0, max: 60 }),
})

describe('for any bag', () => {
  holds(
    'more distance never asks for a shorter shot of the same kind',
    shot,
    ({ plan: drawn, pin, distance: near, more }) => {
      const [first, second] = [shotNote(drawn, near, pin), shotNote(drawn, near + more, pin)]
      if (first.kind === 'green' && second.kind === 'green' && first.approach.aim === second.approach.aim) {
        expect(second.approach.plays).toBeGreaterThanOrEqual(first.approach.plays)
        if (second.approach.swing) {
          expect(second.approach.swing.club.carry).toBeGreaterThanOrEqual(first.approach.swing?.club.carry ?? 0)
        }
      }
      if (first.kind !== 'lay-up' || second.kind !== 'lay-up') return
      const [one, other] = [first.layUp, second.layUp]
      if (one?.kind !== 'to-favourite' || other?.kind !== 'to-favourite') return
      expect(other.shot).toBeGreaterThanOrEqual(one.shot)
      expect(other.swing?.club.carry ?? 0).toBeGreaterThanOrEqual(one.swing?.club.carry ?? 0)
    },
  )

  holds('never recommends what no club reaches', shot, ({ plan: drawn, pin, distance: far }) => {
    const note = shotNote(drawn, far, pin)
    const reach = longestOf(clubsOffTheGround(drawn.bag))?.carry ?? null
    if (note.kind === 'green') {
      const { swing, plays } = note.approach
      if (swing) expect(swing.club.carry).toBeGreaterThanOrEqual(Math.max(plays, far))
      if (reach !== null && drawn.bag.clubs.length >= enoughNumbers) expect(plays).toBeLessThanOrEqual(reach)
      return
    }
    expect(far).toBeGreaterThan(reach ?? 0)
    if (note.layUp?.kind === 'to-favourite') expect(note.layUp.shot).toBeLessThanOrEqual(reach ?? 0)
  })

  const hole = fc.record({
    plan: anyPlan,
    par: fc.integer({ min: 3, max: 6 }),
    length: fc.integer({ min: 60, max: 700 }),
  })
  holds('a hole is laid up exactly where no club reaches after the tee shot', hole, ({ plan: drawn, par, length }) => {
    const found = holePlan(drawn, par, length)
    if (found.kind === 'few-clubs') return
    expect(found.left + (found.tee?.carry ?? 0)).toBe(length)
    const from = found.tee === null ? drawn.bag.clubs : clubsOffTheGround(drawn.bag)
    const reaches = from.some(({ carry }) => carry >= found.left)
    expect(found.kind).toBe(reaches ? 'green' : 'lay-up')
  })
})
