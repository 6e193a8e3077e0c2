import { describe, expect, it } from 'vitest'
import { foldOps } from '#core/log/fold.ts'
import { makeKey, scoreKey } from '#core/outing/keys.ts'
import type { Results } from '#core/outing/results.ts'
import { resultsAfter, resultsOf } from '#core/outing/results-of.ts'
import { type OutingView, viewAfter, viewOf } from '#core/outing/view.ts'
import type { Json } from '#core/values/json.ts'
import { isKnownValue } from '#shared/facts.ts'
import { histories, makeOp } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'
import { alder, birch, groupA, groupB, startOp, stateWith } from '#tests/kit/two-groups.ts'

const scores = [
  scoreKey({ group: groupA, ball: alder, hole: 1, lap: 1, record: 'card' }),
  scoreKey({ group: groupA, ball: alder, hole: 1, lap: 1, record: 'marker' }),
  scoreKey({ group: groupA, ball: alder, hole: 9, lap: 1, record: 'card' }),
  scoreKey({ group: groupB, ball: alder, hole: 1, lap: 1, record: 'card' }),
  scoreKey({ group: '', ball: alder, hole: 1, lap: 1, record: 'desk' }),
  scoreKey({ group: groupB, ball: birch, hole: 2, lap: 1, record: 'card' }),
]
const close = makeKey('closeBall', { ball: alder })
const handicap = makeKey('handicap', { player: 'birch' })

const valuesOf = (key: string): Json[] => {
  if (key === close) return [{ scores: [[1, 1, 4]] }, null]
  if (key === handicap) return [{ kind: 'plain-strokes', strokes: 9 }]
  return key.startsWith('of-a-newer-version') ? [1] : [4, 5, 'picked-up', 'of a newer version', null]
}
// Scores come often, so that most steps are of scores alone.
const keys = [...scores, ...scores, ...scores, close, handicap, 'of-a-newer-version/1']

const start = stateWith([])

/** All but what makes the next score quick. */
const shownOf = ({ state, outing }: OutingView, { games, cards }: Results) => ({
  state,
  outing,
  games,
  cards: [...outing.balls.keys()].map(cards.get),
})

describe('the view after more ops', () => {
  holds(
    'is the view of the whole log, step by step',
    histories({ keys, valuesOf }),
    ops => {
      let view: OutingView = viewOf(start, isKnownValue)
      let results = resultsAfter(null, view.levels)
      for (const op of ops) {
        const next = viewAfter(view, foldOps(view.state, [op]), isKnownValue)
        results = resultsAfter({ levels: view.levels, results }, next.levels)
        view = next
        const whole = viewOf(view.state, isKnownValue)
        expect(shownOf(view, results)).toEqual(shownOf(whole, resultsOf(whole.outing)))
      }
    },
    4_000,
  )

  it('keeps what a score does not enter', () => {
    const before = viewOf(start, isKnownValue)
    const key = scores[0] ?? ''
    const state = foldOps(start, [makeOp([startOp], 'fir', [{ key, value: 4, replaces: [] }])])
    const after = viewAfter(before, state, isKnownValue)
    expect(after.outing.players).toBe(before.outing.players)
    expect(after.outing.cards.get(birch)).toBe(before.outing.cards.get(birch))
    expect(after.levels.cards.get(birch)).toBe(before.levels.cards.get(birch))
    expect(after.outing.cards.get(alder)).not.toBe(before.outing.cards.get(alder))
    expect(viewAfter(after, after.state, isKnownValue)).toBe(after)
  })
})
