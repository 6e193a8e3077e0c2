import * as fc from 'fast-check'
import { emptyLog, foldOps, type LogState, standingsOf } from '#core/log/fold.ts'
import { type Fact, nextTick, type Op, opIdOf } from '#core/log/op.ts'
import { snapshotOf } from '#core/log/snapshot.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'

/** What a random history is made of: the keys its ops write and the values they give them; null takes one away. */
export interface Alphabet {
  readonly keys: readonly string[]
  readonly valuesOf: (key: string) => readonly Json[]
}

/** One number an op: cheap to draw, and 20,000 histories take seconds. */
const codes = (longest: number): fc.Arbitrary<number[]> =>
  fc.array(fc.integer({ min: 0, max: 2 ** 31 - 1 }), { maxLength: longest })

/** Histories in which each op saw a random part of what came before it. */
export const histories = (alphabet: Alphabet, longest = 7): fc.Arbitrary<Op[]> =>
  codes(longest).map(drawn => opsOfCodes(drawn, alphabet))

/** An order and repetition of a list, drawn as numbers to sort by. */
export const shuffles: fc.Arbitrary<number> = fc.integer({ min: 0, max: 2 ** 31 - 1 })

const devices = ['alder', 'birch', 'cedar'] as const

function opsOfCodes(drawn: readonly number[], { keys, valuesOf }: Alphabet): Op[] {
  const ops: Op[] = []
  for (const code of drawn) {
    const take = takerOf(code)
    const device = devices[take(3)] ?? 'alder'
    const count = 1 + take(2)
    const facts = new Map<string, Fact>()
    for (let i = 0; i < count; i++) {
      const key = keys[take(keys.length)] ?? ''
      const values = valuesOf(key)
      facts.set(key, { key, value: values[take(values.length)] ?? null, replaces: someBefore(ops, key, take(64)) })
    }
    ops.push(makeOp(ops, device, [...facts.values()], 1 + take(4)))
  }
  return ops
}

/** Draws small numbers out of one big one. */
function takerOf(code: number): (below: number) => number {
  let left = code
  return below => {
    const drawn = left % below
    // Stirred, so that later draws do not run dry.
    left = Math.floor(left / below) ^ (((drawn + 1) * 0x9e3779b) & 0x3fffffff)
    return drawn
  }
}

const someBefore = (ops: readonly Op[], key: string, mask: number): Fact['replaces'] =>
  ops
    .filter(op => op.facts.some(fact => fact.key === key))
    .slice(-6)
    .filter((_, place) => ((mask >> place) & 1) === 1)
    .map(opIdOf)

/** An op of a device that has written these before. */
export function makeOp(before: readonly Op[], device: string, facts: readonly Fact[], tick?: number): Op {
  const largest = before.reduce((most, op) => Math.max(most, op.tick), 0)
  return {
    log: 'log' as LogId,
    scope: null,
    device: device as DeviceId,
    n: 1 + before.filter(op => op.device === device).length,
    tick: tick ?? nextTick(largest),
    at: 0,
    act: 'act',
    facts,
  }
}

export const foldAll = (ops: Iterable<Op>): LogState => foldOps(emptyLog, ops)

/** The one text of a state. */
export const textOf = (state: LogState): string => canonicalJson(snapshotOf(state) as unknown as Json)

/** The list in another order, some of it twice. */
export function shuffled<T>(list: readonly T[], order: number): T[] {
  const take = takerOf(order)
  const twice = list.filter(() => take(3) === 0)
  return [...list, ...twice]
    .map(value => ({ value, rank: take(1000) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ value }) => value)
}

/** The different values under a key, as texts in order. */
export const valuesUnder = (state: LogState, key: string): string[] =>
  [...new Set(standingsOf(state, key).map(({ value }) => canonicalJson(value)))].sort()
