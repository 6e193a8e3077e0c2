import { describe, expect, test } from 'vitest'
import { golferOfPlan } from '#client/screens/bag/golfer-of-plan.ts'
import { numbersOfHole } from '#client/screens/hole/own/hole-numbers.ts'
import { linesOfAdvice, worthText } from '#client/words/hole-advice-text.ts'
import type { Outing } from '#core/outing/outing.ts'
import type { HoleSketch } from '#core/outing/sketch.ts'
import type { Golfer } from '#core/plan/golfer.ts'
import type { Plan } from '#core/plan/plan.ts'
import type { BallId, ShapeId } from '#core/values/ids.ts'
import { outingOfPlain, plainWith } from '../../../kit/plain-outing.ts'
import { makePlan } from '../../../kit/player-plan.ts'

const outing = outingOfPlain(plainWith({ scores: [] }))
const alder = 'alder' as BallId
const plan = makePlan({ indexTenths: 180, ratings: 'men' })
const numbers = (hole: number, by: Plan = plan, on: Outing = outing) =>
  numbersOfHole(on, alder, { hole, lap: 1 }, by, golferOfPlan(by) as Golfer)
const lines = (hole: number, by: Plan = plan, on: Outing = outing): readonly string[] => {
  const found = numbers(hole, by, on)
  return found === null ? [] : linesOfAdvice(found.advice, found.known, by.unit)
}

const waterRight: HoleSketch = {
  green: null,
  shapes: new Map([
    [
      'w' as ShapeId,
      {
        kind: 'water',
        unit: 'yards',
        by: 'line',
        side: 'right',
        from: 'tee',
        distance: 190,
        gap: 8,
        width: 60,
        length: 80,
      },
    ],
  ]),
}
const drawn: Outing = { ...outing, sketches: new Map([[2, waterRight]]) }

describe('what the numbers say of a hole', () => {
  test('stands on length and par alone: the tee shot, what is left, where to miss', () => {
    // Quillmoor's second, a par 5 of 492 yards, with 215 of carry and 20 of roll.
    expect(lines(2)[0]).toBe('Off the tee: Driver, down the line.')
    expect(lines(2).join(' ')).toContain('That leaves about 257, out of reach. Worth most: 3 wood, to leave')
    expect(lines(2).join(' ')).toMatch(/Leaving your 100 costs about \d\.\d strokes in ten more\./)
    expect(lines(2).join(' ')).toContain('A miss of the green is cheapest short, dearest long.')
    expect(lines(2).join(' ')).not.toContain('Trouble')
  })

  test('counts what is drawn: the aim moves away from water, which is named', () => {
    expect(lines(2, plan, drawn)[0]).toMatch(/aimed \d+ left of the line\.$/)
    expect(lines(2, plan, drawn).at(-1)).toBe('Trouble: water right, 190 to 270 from the tee.')
  })

  test('takes a fairway for granted where none is drawn', () => {
    const shapes = numbers(2, plan, drawn)?.known.sketch?.shapes ?? []
    expect(shapes.map(({ kind }) => kind)).toEqual(['water', 'fairway'])
  })

  test('tells lengths in the player’s own unit', () => {
    const metres = makePlan({ ...plan, unit: 'metres' })
    expect(lines(2, metres, drawn).at(-1)).toBe('Trouble: water right, 174 to 247 from the tee.')
  })

  test('says what a hole is worth once the ratings are chosen: bogey for an Index of 18', () => {
    const worth = numbers(1)?.worth
    expect(worth && worthText(worth)).toMatch(/^Bogey is level here: about 5\.\d on average$/)
    expect(numbers(1, makePlan({ ...plan, ratings: null }))?.worth).toBeNull()
  })

  test('has words for every level', () => {
    const words = [-1, 0, 1, 2, 3, 4].map(levelToPar => worthText({ expected: 5.04, levelToPar }))
    expect(words.map(text => text.split(' is level here: ')[0])).toEqual([
      'Under par',
      'Par',
      'Bogey',
      'Double bogey',
      'Triple bogey',
      '4 over par',
    ])
  })

  test('has ten tee shots, and ten at the green where one is in reach; water takes some of the first', () => {
    expect(numbers(1)?.pictures.map(({ at }) => at)).toEqual(['tee', 'green'])
    expect(numbers(2)?.pictures.map(({ at }) => at)).toEqual(['tee'])
    const [tee] = numbers(2, plan, drawn)?.pictures ?? []
    expect(tee?.picture.strokes).toHaveLength(10)
    expect(tee?.aimRightYd).toBeLessThan(0)
  })

  test('says nothing of a hole whose length is not in', () => {
    expect(numbersOfHole(outing, null, { hole: 2, lap: 1 }, plan, golferOfPlan(plan) as Golfer)).toBeNull()
  })
})
