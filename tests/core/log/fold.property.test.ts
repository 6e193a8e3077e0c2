import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { foldOps, keysOf, seenUnder, standingsOf } from '#core/log/fold.ts'
import { type Fact, opIdOf } from '#core/log/op.ts'
import { snapshotOf, stateOfSnapshot } from '#core/log/snapshot.ts'
import { foldAll, histories, makeOp, shuffled, shuffles, textOf, valuesUnder } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'

const keys = ['a', 'b', 'c']
const alphabet = { keys, valuesOf: () => [1, 2, 3, null] }
const history = histories(alphabet)

describe('the fold', () => {
  holds('does not depend on order or repetition', fc.tuple(history, shuffles), ([ops, order]) => {
    expect(textOf(foldAll(shuffled(ops, order)))).toBe(textOf(foldAll(ops)))
  })

  holds('goes on from a snapshot of any part', fc.tuple(history, shuffles, shuffles), ([ops, part, order]) => {
    const some = shuffled(ops, part).slice(0, part % (ops.length + 1))
    const wire = JSON.parse(JSON.stringify(snapshotOf(foldAll(some))))
    expect(textOf(foldOps(stateOfSnapshot(wire), shuffled(ops, order)))).toBe(textOf(foldAll(ops)))
  })

  holds('keeps an op of several facts whole, and replacing one leaves the others', history, before => {
    const facts = keys.map((key, place): Fact => ({ key, value: place + 10, replaces: [] }))
    const whole = makeOp(before, 'rowan', facts)
    const state = foldAll([...before, whole])
    const holdersOf = (of: typeof state) =>
      keys.filter(key => standingsOf(of, key).some(({ op }) => op === opIdOf(whole)))
    expect(holdersOf(state)).toEqual(keys)
    const one = makeOp([...before, whole], 'birch', [{ key: 'b', value: 99, replaces: [opIdOf(whole)] }])
    expect(holdersOf(foldOps(state, [one]))).toEqual(['a', 'c'])
    expect(holdersOf(foldAll([one, whole, ...before]))).toEqual(['a', 'c'])
  })

  holds(
    'holds nothing under a key once all that was seen is withdrawn',
    fc.tuple(history, shuffles),
    ([before, order]) => {
      const gone = makeOp(before, 'rowan', [{ key: 'a', value: null, replaces: seenUnder(foldAll(before), 'a') }])
      const state = foldAll(shuffled([...before, gone], order))
      expect(keysOf(state).includes('a')).toBe(false)
      expect(valuesUnder(state, 'b')).toEqual(valuesUnder(foldAll(before), 'b'))
    },
  )

  // A phone's clock may be days off, and set on the way.
  holds('compares no clock', fc.tuple(history, shuffles), ([ops, clocks]) => {
    const dayMs = 86_400_000
    const skewed = ops.map((op, place) => ({ ...op, at: op.at + (((clocks >> (place % 16)) % 7) - 3) * 1_000 * dayMs }))
    const standing = (of: typeof ops) => {
      const state = foldAll(of)
      return keys.map(key => standingsOf(state, key).map(({ op, value }) => [op, value]))
    }
    expect(standing(skewed)).toEqual(standing(ops))
  })
})
