import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { scoresOn } from '#core/card/settle-card.ts'
import { type LogState, standingsOf } from '#core/log/fold.ts'
import { acceptLateFacts, closeBallFacts } from '#core/outing/acts.ts'
import { makeKey, scoreKey } from '#core/outing/keys.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { canonicalJson } from '#core/values/json.ts'
import { histories, makeOp, shuffled, shuffles } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'
import { actAfter, alder, groupA, outingOfState, outingWith, startOp, stateWith } from '#tests/kit/two-groups.ts'

const keys = (['card', 'marker', 'desk'] as const).map(record =>
  scoreKey({ group: groupA, ball: alder, hole: 1, lap: 1, record }),
)
const history = histories({ keys, valuesOf: () => [4, 5, 'picked-up', null] })
const closedWith = fc.constantFrom(4, 5, 'picked-up' as const, null)
const score = fc.constantFrom(4, 5, 6, 'picked-up' as const)

/** Alder's points and the over-level sums: everything a late score could change. */
function totalsOf(outing: ReturnType<typeof outingWith>): string {
  const results = resultsOf(outing)
  const game = [...results.games.values()][0]
  const line = game?.kind === 'total' ? game.lines.find(({ side }) => side.includes(alder)) : undefined
  const threes = results.cards.get(alder)?.threes.map(({ overLevel }) => overLevel) ?? []
  return canonicalJson([line?.total ?? null, line?.through ?? null, ...threes])
}

const valuesHeld = (state: LogState): (string | number)[] =>
  keys.flatMap(key => standingsOf(state, key).map(({ value }) => value as string | number))

describe('a closed ball', () => {
  holds(
    'lists a score that differs and changes no total, in whatever order score and close arrive',
    fc.tuple(history, closedWith, shuffles),
    ([ops, closed, order]) => {
      const value = { scores: closed === null ? [] : [[1, 1, closed]] }
      const close = makeOp([startOp, ...ops], 'desk', [
        { key: makeKey('closeBall', { ball: alder }), value, replaces: [] },
      ])
      const outing = outingWith(shuffled([close, ...ops], order))
      const found = outing.cards.get(alder)
      expect(found && scoresOn(found, '1/1')).toEqual(closed === null ? [] : [closed])
      const differing = valuesHeld(stateWith(ops)).filter(each => each !== closed)
      expect(outing.late.map(late => late.value).sort()).toEqual(differing.sort())
      expect(totalsOf(outing)).toBe(totalsOf(outingWith([close])))
    },
  )

  holds(
    'counts another score once the desk accepts it, and nothing is late then',
    fc.tuple(history, history, score, shuffles),
    ([before, more, accepted, order]) => {
      const settled = outingWith(before)
      const close = actAfter(before, 'desk', closeBallFacts(settled, [alder]))
      const isOpen = settled.cards.get(alder)?.scores.get('1/1')?.kind === 'two'
      expect(close.facts.length).toBe(isOpen ? 0 : 1)
      if (isOpen) return
      const later = more.map(op => ({ ...op, n: op.n + before.length }))
      const held = [...before, close, ...later]
      const state = stateWith(held)
      const choice = { ball: alder, hole: 1, lap: 1, score: accepted }
      const accept = actAfter(held, 'desk', acceptLateFacts(state, outingOfState(state), choice))
      const outing = outingWith(shuffled([...held, accept], order))
      const found = outing.cards.get(alder)
      expect(found && scoresOn(found, '1/1')).toEqual([accepted])
      expect(outing.late).toEqual([])
    },
  )
})
