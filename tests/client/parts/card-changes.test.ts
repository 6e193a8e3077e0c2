import { describe, expect, test } from 'vitest'
import { cardChanges } from '#client/parts/card-changes.ts'
import { noMark } from '#client/sync/held-op.ts'
import { type Op, textOfOp, withdrawn } from '#core/log/op.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { Json } from '#core/values/json.ts'
import { actAfter, alder, birch, groupA, outingWith, startOp } from '#tests/kit/two-groups.ts'

const score = (hole: number, value: Json, ball = alder) => ({
  key: makeKey('score', { group: groupA, ball, hole, lap: 1, record: 'card' }),
  value,
})

/** What is listed after these acts of Alder's phone, each a list of scores. */
function changes(...acts: (readonly { key: string; value: Json }[])[]) {
  const ops: Op[] = []
  for (const facts of acts) ops.push(actAfter(ops, 'a-phone', facts))
  const beside = { seq: null, serverAt: null, carrier: null, mark: noMark }
  const history = [startOp, ...ops].map((op, place) => ({ op, text: textOfOp(op), place, ...beside }))
  return cardChanges(history, outingWith(ops), alder).map(({ hole, from, to }) => `${hole}: ${from} to ${to}`)
}

describe('the changes to a card', () => {
  test('are the scores that took the place of others, in order, and no first score', () => {
    expect(changes([score(8, 5)], [score(9, 4)], [score(8, 6)], [score(9, 'picked-up')])).toEqual([
      '8: 5 to 6',
      '9: 4 to picked up',
    ])
  })

  test('a hole cleared is one, what is put in after it is not, and several in one act are each listed', () => {
    expect(changes([score(8, 5), score(9, 4)], [score(8, withdrawn)], [score(8, 7), score(9, 3)])).toEqual([
      '8: 5 to nothing',
      '9: 4 to 3',
    ])
  })

  test('the same score again changes nothing, and another ball’s changes are not here', () => {
    expect(changes([score(8, 5), score(8, 4, birch)], [score(8, 5)], [score(8, 6, birch)])).toEqual([])
  })
})
