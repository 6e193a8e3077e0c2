import type { OpId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import { type Fact, type Op, opIdOf, partsOfOpId, withdrawn } from './op.ts'
import { addNumber, type Here, isHere } from './ranges.ts'

/** A value that nothing has replaced, and the op that said it. */
export interface Standing {
  readonly value: Json
  readonly op: OpId
  readonly tick: number
  readonly at: number
}

/**
 * What a set of ops says. It depends on the set alone, not on order or repetition:
 * `current` holds each fact that no op here replaces, `buried` each (op, key) named by an op here before that op came.
 */
export interface LogState {
  /** Key to its current values, ascending by (tick, device, n). No empty lists. */
  readonly current: ReadonlyMap<string, readonly Standing[]>
  readonly buried: ReadonlyMap<OpId, ReadonlySet<string>>
  readonly here: Here
  /** The largest tick seen; 0 before any. */
  readonly tick: number
}

export const emptyLog: LogState = { current: new Map(), buried: new Map(), here: new Map(), tick: 0 }

/** The state with these ops in it. What is here already is passed over. */
export function foldOps(state: LogState, ops: Iterable<Op>): LogState {
  const draft = createDraft(state)
  for (const op of ops) addOp(draft, op)
  return draft
}

interface Draft extends LogState {
  current: Map<string, readonly Standing[]>
  buried: Map<OpId, ReadonlySet<string>>
  here: Map<Op['device'], ReturnType<typeof addNumber>>
  tick: number
}

const createDraft = (state: LogState): Draft => ({
  current: new Map(state.current),
  buried: new Map(state.buried),
  here: new Map(state.here),
  tick: state.tick,
})

function addOp(draft: Draft, op: Op): void {
  if (isHere(draft.here, op.device, op.n)) return
  const id = opIdOf(op)
  const replacedAlready = draft.buried.get(id)
  draft.buried.delete(id)
  draft.here.set(op.device, addNumber(draft.here.get(op.device) ?? [], op.n))
  draft.tick = Math.max(draft.tick, op.tick)
  for (const fact of op.facts) {
    for (const replaced of fact.replaces) replaceFact(draft, fact.key, replaced)
    if (fact.value === withdrawn || replacedAlready?.has(fact.key)) continue
    addStanding(draft, fact, { value: fact.value, op: id, tick: op.tick, at: op.at })
  }
}

function replaceFact(draft: Draft, key: string, replaced: OpId): void {
  const { device, n } = partsOfOpId(replaced)
  if (!isHere(draft.here, device, n)) {
    draft.buried.set(replaced, new Set(draft.buried.get(replaced)).add(key))
    return
  }
  const left = (draft.current.get(key) ?? []).filter(standing => standing.op !== replaced)
  if (left.length === 0) draft.current.delete(key)
  else draft.current.set(key, left)
}

function addStanding(draft: Draft, { key }: Fact, standing: Standing): void {
  const others = draft.current.get(key)
  draft.current.set(key, others ? [...others, standing].sort(compareStandings) : [standing])
}

/** By (tick, device, n): the order in which ties go. */
export function compareStandings(a: Standing, b: Standing): number {
  if (a.tick !== b.tick) return a.tick - b.tick
  const [left, right] = [partsOfOpId(a.op), partsOfOpId(b.op)]
  if (left.device !== right.device) return left.device < right.device ? -1 : 1
  return left.n - right.n
}

/** The current values of a key, ascending; empty when nobody has said anything. */
export const standingsOf = (state: LogState, key: string): readonly Standing[] => state.current.get(key) ?? []

/** True when the standings hold different values; several equal ones agree. */
export function isDisputed(standings: readonly Standing[]): boolean {
  const [first, ...rest] = standings
  if (first === undefined || rest.length === 0) return false
  const text = canonicalJson(first.value)
  return rest.some(({ value }) => canonicalJson(value) !== text)
}

/** The ops whose fact under this key a writer who sees this state replaces. */
export const seenUnder = (state: LogState, key: string): readonly OpId[] => standingsOf(state, key).map(({ op }) => op)
