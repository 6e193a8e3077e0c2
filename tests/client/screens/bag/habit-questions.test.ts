import { describe, expect, test } from 'vitest'
import { golferOfPlan } from '#client/screens/bag/golfer-of-plan.ts'
import { habitQuestions } from '#client/screens/bag/habit-questions.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import { makePlan } from '#tests/kit/player-plan.ts'

const plan = makePlan({ indexTenths: 180, ratings: 'men' })
const golfer = golferOfPlan(plan) as Golfer

describe('the habits held against the numbers', () => {
  test('are asked where the player’s own numbers put them, each with an answer', () => {
    const questions = habitQuestions(plan)
    expect(questions.map(({ at }) => at)).toEqual([
      'From 140 yards, the flag near one side, rough around the green.',
      'From 110 yards: 5 past the pin, or its own number.',
      'From 110 yards: 5 short of the pin, or its own number.',
      'The green just out of reach, open ground: 100 left, or another number.',
      'Off the tee of an open par 4 of 380 yards.',
    ])
    for (const { work, title } of questions) expect(work(golfer), title).not.toBeNull()
  })

  test('are the same question in metres', () => {
    const metres = makePlan({ ...plan, unit: 'metres' })
    expect(habitQuestions(metres)[4]?.at).toBe('Off the tee of an open par 4 of 350 metres.')
  })

  test('ask for the number, or for the driver, that is not there', () => {
    const [, , , favourite] = habitQuestions(makePlan({ ...plan, favourite: null }))
    expect(favourite?.work(golfer)).toBeNull()
    expect(favourite?.none).toBe('Choose your lay-up number, and it is held against others.')
    const driver = habitQuestions(plan)[4]
    const without = { ...golfer, clubs: golfer.clubs.filter(({ club }) => club !== 'driver') }
    expect(driver?.work(without)).toBeNull()
    expect(driver?.none).toBe('Needs a driver and another club in your bag.')
  })
})
