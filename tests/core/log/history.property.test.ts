import * as fc from 'fast-check'
import { describe, expect } from 'vitest'
import { seenUnder, standingsOf } from '#core/log/fold.ts'
import { changesOf } from '#core/log/history.ts'
import { canonicalJson } from '#core/values/json.ts'
import { foldAll, histories, makeOp, valuesUnder } from '#tests/kit/histories.ts'
import { holds } from '#tests/kit/property.ts'

const history = histories({ keys: ['a', 'b'], valuesOf: () => [4, 5, 6, null] })

describe('history', () => {
  holds(
    'a value that saw the earlier ones replaces them, with a line',
    fc.tuple(history, fc.integer({ min: 3, max: 6 })),
    ([before, value]) => {
      const was = foldAll(before)
      const op = makeOp(before, 'rowan', [{ key: 'a', value, replaces: seenUnder(was, 'a') }])
      const ops = [...before, op]
      expect(standingsOf(foldAll(ops), 'a').map(standing => standing.value)).toEqual([value])
      const lines = changesOf(ops).filter(change => change.op === op)
      const replaced = valuesUnder(was, 'a')
      const isChange = replaced.length !== 1 || replaced[0] !== String(value)
      expect(lines.map(({ key, from, to }) => ({ key, from: from.map(canonicalJson).sort(), to }))).toEqual(
        isChange ? [{ key: 'a', from: replaced, to: value }] : [],
      )
    },
  )
})
