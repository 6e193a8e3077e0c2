import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { foldOps, seenUnder } from '#core/log/fold.ts'
import { opIdOf } from '#core/log/op.ts'
import { undoOf } from '#core/log/undo.ts'
import { foldAll, histories, makeOp, shuffled, shuffles, valuesUnder } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'

const keys = ['a', 'b', 'c']
const history = histories({ keys, valuesOf: () => [1, 2, 3, null] })
const values = fc.tuple(...keys.map(() => fc.constantFrom(1, 2, null)))

describe('undo', () => {
  holds('gives back exactly what stood before', fc.tuple(history, values, shuffles), ([before, written, order]) => {
    const was = foldAll(before)
    const facts = keys.map((key, i) => ({ key, value: written[i] ?? null, replaces: seenUnder(was, key) }))
    const act = makeOp(before, 'rowan', facts)
    const ops = [...before, act]
    const undo = undoOf(foldAll(ops), ops, act)
    const undone = undo.facts.length === 0 ? ops : [...ops, makeOp(ops, 'fir', undo.facts)]
    const is = foldAll(shuffled(undone, order))
    const left = new Set(undo.left.map(({ key }) => key))
    for (const key of keys) {
      const had = valuesUnder(was, key)
      expect(left.has(key)).toBe(had.length > 1)
      if (had.length <= 1) expect(valuesUnder(is, key)).toEqual(had)
    }
  })

  holds('leaves and names a fact changed since', fc.tuple(history, fc.constantFrom(1, 2, null)), ([before, value]) => {
    const act = makeOp(before, 'rowan', [{ key: 'a', value, replaces: seenUnder(foldAll(before), 'a') }])
    const later = makeOp([...before, act], 'birch', [{ key: 'a', value: 7, replaces: [opIdOf(act)] }])
    const ops = [...before, act, later]
    const undo = undoOf(foldOps(foldAll(before), [act, later]), ops, act)
    expect(undo).toEqual({ facts: [], left: [{ key: 'a', reason: 'changed since' }] })
  })
})
