import type { OpId } from '#core/values/ids.ts'
import { canonicalJson } from '#core/values/json.ts'
import { type LogState, standingsOf } from './fold.ts'
import { type Fact, type Op, opIdOf, withdrawn } from './op.ts'

export const leftReasons = ['changed since', 'ended two values', 'not held here'] as const
export type LeftReason = (typeof leftReasons)[number]

/** What undoing an act would write, and what it leaves as it is. */
export interface Undo {
  readonly facts: readonly Fact[]
  readonly left: readonly { readonly key: string; readonly reason: LeftReason }[]
}

/**
 * Gives each fact of the act back the value that would stand had the act not been, and replaces that act alone.
 * A fact changed since, one in which the act had ended two values, and one whose earlier op is not held here are
 * left and named.
 */
export function undoOf(state: LogState, ops: readonly Op[], act: Op): Undo {
  const facts: Fact[] = []
  const left: { key: string; reason: LeftReason }[] = []
  for (const fact of act.facts) {
    const outcome = undoFact(state, ops, act, fact)
    if (typeof outcome === 'string') left.push({ key: fact.key, reason: outcome })
    else facts.push(outcome)
  }
  return { facts, left }
}

function undoFact(state: LogState, ops: readonly Op[], act: Op, fact: Fact): Fact | LeftReason {
  const id = opIdOf(act)
  if (!standsStill(state, ops, fact, id)) return 'changed since'
  const before = valuesBefore(ops, act, fact)
  if (before === null) return 'not held here'
  if (before.size > 1) return 'ended two values'
  const [value = withdrawn] = before.values()
  return { key: fact.key, value, replaces: [id] }
}

/** A withdrawal leaves nothing, so it stands while nothing else was said. */
function standsStill(state: LogState, ops: readonly Op[], fact: Fact, id: OpId): boolean {
  const standings = standingsOf(state, fact.key)
  if (fact.value === withdrawn) return standings.length === 0 && !isReplaced(ops, fact.key, id)
  return standings.some(({ op }) => op === id)
}

/** The distinct values that the act's fact replaced and no other op did; null when one of their ops is not held. */
function valuesBefore(ops: readonly Op[], act: Op, fact: Fact): Map<string, Fact['value']> | null {
  const values = new Map<string, Fact['value']>()
  for (const replaced of fact.replaces) {
    const earlier = ops.find(op => opIdOf(op) === replaced)
    if (!earlier) return null
    const said = earlier.facts.find(({ key }) => key === fact.key)
    if (!said || said.value === withdrawn || isReplaced(ops, fact.key, replaced, act)) continue
    values.set(canonicalJson(said.value), said.value)
  }
  return values
}

const isReplaced = (ops: readonly Op[], key: string, id: OpId, except?: Op): boolean =>
  ops.some(op => op !== except && op.facts.some(fact => fact.key === key && fact.replaces.includes(id)))
