import { expect, test } from 'vitest'
import { grossOf } from '#client/screens/rulings/gross-of.ts'
import { autumnDay, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

test('the sum of a card is there once every hole has one score in strokes', () => {
  const [alder = { ball: 'alder', holes: [] }] = autumnDay.scores
  const sum = alder.holes.reduce<number>((all, score) => all + Number(score), 0)
  expect(grossOf(outingOfPlain(plainWith()), 'alder')).toBe(sum)
  for (const last of [null, 'picked-up']) {
    const scores = [{ ...alder, holes: [...alder.holes.slice(0, 17), last] }]
    expect(grossOf(outingOfPlain(plainWith({ scores })), 'alder')).toBeNull()
  }
  expect(grossOf(outingOfPlain(plainWith()), 'oak')).toBeNull()
})
