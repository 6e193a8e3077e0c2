import { describe, expect, test } from 'vitest'
import { candidatesOf, markOfCardScore, markOfScore } from '#client/parts/mark.ts'
import type { CardScore, ScoreEntry } from '#core/card/card.ts'
import type { HoleScore } from '#core/card/score.ts'
import type { OpId } from '#core/values/ids.ts'

const entry = (score: HoleScore): ScoreEntry => ({
  key: 'g/g1/score/p1/8/1/card',
  value: score,
  op: `d.${String(score)}` as OpId,
  at: 0,
})

const two: CardScore = { kind: 'two', entries: [entry('picked-up'), entry(6), entry(5), entry(6)] }

describe('what the strip draws', () => {
  test('a score against the level of its own ball', () => {
    expect(markOfScore(5, 6)).toEqual({ kind: 'value', over: -1 })
    expect(markOfScore('picked-up', 6)).toEqual({ kind: 'picked-up' })
  })

  test('the line alone where nothing is written or the hole was not played', () => {
    expect(markOfCardScore(undefined, 4)).toEqual({ kind: 'open' })
    expect(markOfScore('not-played', 4)).toEqual({ kind: 'open' })
  })

  test('each different result once where they wait for a choice, the lowest first', () => {
    expect(candidatesOf(two)).toEqual([5, 6, 'picked-up'])
    expect(markOfCardScore(two, 5)).toEqual({
      kind: 'two',
      halves: [{ kind: 'value', over: 0 }, { kind: 'value', over: 1 }, { kind: 'picked-up' }],
    })
  })
})
