import type { OpId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import { compareOps, type Op, opIdOf, withdrawn } from './op.ts'

/** One line of history: what an op made of a key. */
export interface Change {
  readonly key: string
  /** The different values that it replaced; empty where it replaced none. */
  readonly from: readonly Json[]
  /** Null where it took the value away. */
  readonly to: Json
  readonly op: Op
}

/**
 * What each op changed, ascending by (tick, device, n). A fact that says again what it replaces changes nothing and has
 * no line; what a replaced op said is known only where that op is among these.
 */
export function changesOf(ops: readonly Op[]): Change[] {
  const byId = new Map(ops.map(op => [opIdOf(op), op]))
  return [...byId.values()].sort(compareOps).flatMap(op =>
    op.facts.flatMap(({ key, value, replaces }): Change[] => {
      const from = valuesSaid(byId, key, replaces)
      const isSame = from.length === 1 && from[0] !== undefined && canonicalJson(from[0]) === canonicalJson(value)
      const isNothing = from.length === 0 && value === withdrawn
      return isSame || isNothing ? [] : [{ key, from, to: value, op }]
    }),
  )
}

function valuesSaid(byId: ReadonlyMap<OpId, Op>, key: string, ops: readonly OpId[]): Json[] {
  const said = new Map<string, Json>()
  for (const id of ops) {
    const fact = byId.get(id)?.facts.find(each => each.key === key)
    if (fact !== undefined && fact.value !== withdrawn) said.set(canonicalJson(fact.value), fact.value)
  }
  return [...said.values()]
}
