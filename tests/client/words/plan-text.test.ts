import { describe, expect, test } from 'vitest'
import { lineOfHole, notesOfHabits, sentencesOfHole, sentencesOfLayUp } from '#client/words/plan-text.ts'
import { bagOf } from '#core/plan/bag.ts'
import type { Club } from '#core/plan/clubs.ts'
import { holePlan } from '#core/plan/hole-plan.ts'
import { layUpFrom } from '#core/plan/lay-up.ts'
import { makePlan } from '../../kit/player-plan.ts'

const plan = makePlan()
const short = new Map<Club, number | null>([['iron-7', 145]])

describe('the line of a hole', () => {
  test.each([
    ['a par 5 out of reach', 5, 500, 'Lay up: 185 leaves 100'],
    ['a par 5 whose number is out of reach too', 5, 560, 'Lay up: 3 wood, leaves 150'],
    ['a par 4', 4, 380, 'Driver leaves 165'],
    ['a par 3 of a mid-iron', 3, 145, '7 iron, middle'],
    ['a short par 3', 3, 112, 'Pitching wedge, 112'],
  ])('%s', (_, par, length, said) => {
    expect(lineOfHole(holePlan(plan, par, length))).toBe(said)
  })

  test('says how much is left where the habit or the number is missing, and nothing without a bag', () => {
    const off = makePlan({ habits: { ...plan.habits, 'lay-up': false } })
    expect(lineOfHole(holePlan(off, 5, 500))).toBe('Out of reach: 285 left')
    expect(lineOfHole(holePlan(makePlan({ favourite: null }), 5, 500))).toBe('Out of reach: 285 left')
    expect(lineOfHole(holePlan(makePlan({ said: short, bag: bagOf(short) }), 5, 500))).toBeNull()
  })
})

describe('the plan of a hole in sentences', () => {
  test('marks what is estimated', () => {
    expect(sentencesOfHole(holePlan(plan, 4, 375))).toEqual([
      'Driver (215) leaves 160: your 5 iron (about 161, estimated) reaches.',
      'Play for the middle of the green.',
      'By carry alone, roll left out.',
    ])
  })

  test('says what a lay-up asks for, and asks for the number where none is chosen', () => {
    const among = plan.bag.clubs
    expect(sentencesOfLayUp(layUpFrom(245, 100, among))).toEqual([
      'Lay up: a shot of 145 leaves your 100.',
      '7 iron (145)',
    ])
    expect(sentencesOfLayUp(layUpFrom(130, 100, among))[1]).toBe('Sand wedge (85), less than a full swing')
    expect(sentencesOfLayUp(layUpFrom(245, null, among))[0]).toContain('Choose your lay-up number')
  })
})

test('the habits that are on are notes with the player’s own numbers', () => {
  const some = makePlan({
    habits: { middle: true, 'pin-depth': false, 'lay-up': true, trees: false, 'six-threes': false },
  })
  expect(notesOfHabits(some)).toEqual([
    'From 140 on: the middle of the green, whatever the pin does.',
    'Lay up to 100, every time.',
  ])
  const none = { middle: false, 'pin-depth': false, 'lay-up': false, trees: false, 'six-threes': false }
  expect(notesOfHabits(makePlan({ habits: none }))).toEqual(['Every habit is switched off.'])
})
