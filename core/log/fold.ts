import type { GroupId, OpId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import { groupOfKey, isKeyOf, type Op, opIdOf, partsOfOpId, withdrawn } from './op.ts'
import { addNumber, type Here, isHere } from './ranges.ts'

/** A value that nothing has replaced, its key, and the op that said it. */
export interface Standing {
  readonly key: string
  readonly value: Json
  readonly op: OpId
  readonly tick: number
  readonly at: number
}

/** Key to its current values, ascending by (tick, device, n). No empty lists. */
export type CurrentFacts = ReadonlyMap<string, readonly Standing[]>

/** The group whose keys a part holds, or null: those outside the groups. */
type PartName = GroupId | null

/**
 * What a set of ops says. It depends on the set alone, not on order or repetition:
 * `current` holds each fact that no op here replaces, `buried` each (op, key) named by an op here before that op came.
 */
export interface LogState {
  /** In parts, so that a score copies the values of its own group and no others. */
  readonly current: ReadonlyMap<PartName, CurrentFacts>
  readonly buried: ReadonlyMap<OpId, ReadonlySet<string>>
  readonly here: Here
  /** The largest tick seen; 0 before any. */
  readonly tick: number
}

/** Current facts as a state holds them. */
export function inParts(facts: CurrentFacts): LogState['current'] {
  const parts = new Map<PartName, Map<string, readonly Standing[]>>()
  for (const [key, standings] of facts) {
    const name = groupOfKey(key)
    const part = parts.get(name) ?? new Map<string, readonly Standing[]>()
    parts.set(name, part.set(key, standings))
  }
  return parts
}

export const emptyLog: LogState = { current: new Map(), buried: new Map(), here: new Map(), tick: 0 }

/** The state with these ops in it. What is here already is passed over. */
export function foldOps(state: LogState, ops: Iterable<Op>): LogState {
  const draft = createDraft(state)
  for (const op of ops) addOp(draft, op)
  const { own: _, ...folded } = draft
  return folded
}

interface Draft extends LogState {
  current: Map<PartName, CurrentFacts>
  /** The parts that this draft has copied and may change. */
  own: Map<PartName, Map<string, readonly Standing[]>>
  buried: Map<OpId, ReadonlySet<string>>
  here: Map<Op['device'], ReturnType<typeof addNumber>>
  tick: number
}

const createDraft = (state: LogState): Draft => ({
  current: new Map(state.current),
  own: new Map(),
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
  const ofScope = op.scope === null ? null : ownPart(draft, op.scope)
  for (const fact of op.facts) {
    const part = ofScope && isKeyOf(op.scope, fact.key) ? ofScope : ownPart(draft, groupOfKey(fact.key))
    for (const replaced of fact.replaces) replaceFact(draft, part, fact.key, replaced)
    if (fact.value === withdrawn || replacedAlready?.has(fact.key)) continue
    addStanding(part, { key: fact.key, value: fact.value, op: id, tick: op.tick, at: op.at })
  }
}

type OwnPart = Map<string, readonly Standing[]>

function ownPart(draft: Draft, name: PartName): OwnPart {
  const own = draft.own.get(name)
  if (own !== undefined) return own
  const part = new Map(draft.current.get(name))
  draft.current.set(name, part)
  draft.own.set(name, part)
  return part
}

function replaceFact(draft: Draft, part: OwnPart, key: string, replaced: OpId): void {
  const { device, n } = partsOfOpId(replaced)
  if (!isHere(draft.here, device, n)) {
    draft.buried.set(replaced, new Set(draft.buried.get(replaced)).add(key))
    return
  }
  const left = (part.get(key) ?? []).filter(standing => standing.op !== replaced)
  if (left.length === 0) part.delete(key)
  else part.set(key, left)
}

function addStanding(part: OwnPart, standing: Standing): void {
  const others = part.get(standing.key)
  part.set(standing.key, others ? [...others, standing].sort(compareStandings) : [standing])
}

/** By (tick, device, n): the order in which ties go. */
export function compareStandings(a: Standing, b: Standing): number {
  if (a.tick !== b.tick) return a.tick - b.tick
  const [left, right] = [partsOfOpId(a.op), partsOfOpId(b.op)]
  if (left.device !== right.device) return left.device < right.device ? -1 : 1
  return left.n - right.n
}

/** The current values of a key, ascending; empty when nobody has said anything. */
export const standingsOf = ({ current }: LogState, key: string): readonly Standing[] =>
  current.get(groupOfKey(key))?.get(key) ?? []

/** Every key that has a current value, in no order. */
export function keysOf({ current }: LogState): string[] {
  const keys: string[] = []
  for (const part of current.values()) for (const key of part.keys()) keys.push(key)
  return keys
}

/** Every key with its current values, in no order. */
export const factsOf = ({ current }: LogState): [key: string, standings: readonly Standing[]][] =>
  [...current.values()].flatMap(part => [...part])

/** The keys whose values differ between two states; a fold keeps the very list of a key that nothing was said about. */
export function changedKeys(before: LogState, after: LogState): string[] {
  const changed: string[] = []
  for (const [name, part] of after.current) {
    const earlier: CurrentFacts = before.current.get(name) ?? new Map()
    if (part !== earlier) changed.push(...changedIn(earlier, part))
  }
  return changed
}

function changedIn(before: CurrentFacts, after: CurrentFacts): string[] {
  const changed: string[] = []
  for (const [key, standings] of after) if (before.get(key) !== standings) changed.push(key)
  for (const key of before.keys()) if (!after.has(key)) changed.push(key)
  return changed
}

/** True when the standings hold different values; several equal ones agree. */
export function isDisputed(standings: readonly Standing[]): boolean {
  if (standings.length < 2) return false
  const [first, ...rest] = standings
  if (first === undefined) return false
  const text = canonicalJson(first.value)
  return rest.some(({ value }) => canonicalJson(value) !== text)
}

/** The ops whose fact under this key a writer who sees this state replaces. */
export const seenUnder = (state: LogState, key: string): readonly OpId[] => standingsOf(state, key).map(({ op }) => op)
