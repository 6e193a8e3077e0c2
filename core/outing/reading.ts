import type { ScoreRow } from '#core/card/settle-card.ts'
import { type CurrentFacts, isDisputed, type LogState, type Standing, standingsOf } from '#core/log/fold.ts'
import { groupOfKey } from '#core/log/op.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import type { FactKind, FactValues, KeyParts } from './facts.ts'
import { parseKey } from './keys.ts'
import type { Doubt, LateFact } from './outing.ts'
import { addWritings, inOrder, type Writings } from './writings.ts'

/** True when this version understands a value of the kind; the schemas know. */
export type IsKnownValue = (kind: FactKind, value: Json) => boolean

/** A key with the values under it that this version understands, ascending by (tick, device, n). */
export interface FactRow<K extends FactKind = FactKind> {
  readonly key: string
  readonly parts: KeyParts
  readonly standings: readonly Standing[]
  /** What play goes on with: the closed value while a close stands, else the last standing. */
  readonly value: FactValues[K]
}

/** Every kind but scores, which a day has thousands of: they are read by ball. */
export type RowKind = Exclude<FactKind, 'score'>

/** The current facts by kind, in order of their keys, with the groups' closes laid over them. */
export interface Reading {
  rows<K extends RowKind>(kind: K): readonly FactRow<K>[]
  readonly writings: Writings
  readonly doubts: readonly Doubt[]
  readonly lateFacts: readonly LateFact[]
  readonly newer: readonly string[]
}

export function readFacts(state: LogState, isKnown: IsKnownValue): Reading {
  const { writings, rows, newer } = knownRows(state.current.values(), isKnown)
  const closes = closedFacts(rows)
  const kept = new Map<FactKind, FactRow[]>()
  const doubts: Doubt[] = []
  const lateFacts: LateFact[] = []
  const keep = (row: FactRow): void => {
    const others = kept.get(row.parts.kind)
    if (others) others.push(row)
    else kept.set(row.parts.kind, [row])
  }
  const keepClosed = (row: FactRow, closed: Json): void => {
    if (closed !== null && isKnown(row.parts.kind, closed)) keep(rowOf(row, closed))
  }
  for (const row of rows) {
    const close = closeOver(closes, row)
    if (close) {
      const closed = close.get(row.key) ?? null
      lateFacts.push(...lateOf(row, closed))
      keepClosed(row, closed)
      continue
    }
    if (isDisputed(row.standings)) doubts.push(row)
    keep(row)
  }
  for (const row of closedAndGone(closes, rows)) keepClosed(row, closeOver(closes, row)?.get(row.key) ?? null)
  return {
    rows: <K extends RowKind>(kind: K) => (kept.get(kind) ?? []) as unknown as readonly FactRow<K>[],
    writings,
    doubts,
    lateFacts,
    newer,
  }
}

/** Known values have their kind's shape: `isKnown` said so. */
const rowOf = ({ key, parts, standings }: Omit<FactRow, 'value'>, value: Json | undefined): FactRow => ({
  key,
  parts,
  standings,
  value: (value ?? null) as unknown as FactRow['value'],
})

interface KnownRows {
  readonly writings: Writings
  /** Of every other kind, in order of their keys. */
  readonly rows: readonly FactRow[]
  readonly newer: readonly string[]
}

function knownRows(facts: Iterable<CurrentFacts>, isKnown: IsKnownValue): KnownRows {
  const writings = new Map<BallId, ScoreRow[]>()
  const rows: FactRow[] = []
  const newer: string[] = []
  for (const part of facts) {
    for (const [key, all] of part) {
      const parts = parseKey(key)
      const standings = parts === null ? [] : knownOf(all, parts.kind, isKnown)
      if (standings.length < all.length) newer.push(key)
      if (parts === null || standings.length === 0) continue
      if (parts.kind === 'score') addWritings(writings, parts, standings)
      else rows.push(rowOf({ key, parts, standings }, standings.at(-1)?.value))
    }
  }
  return { writings: inOrder(writings), rows: rows.sort(byKey), newer: newer.sort() }
}

const byKey = (a: FactRow, b: FactRow): number => (a.key < b.key ? -1 : 1)

/** The list itself where all are known: nearly always. */
function knownOf(all: readonly Standing[], kind: FactKind, isKnown: IsKnownValue): readonly Standing[] {
  for (const { value } of all) if (!isKnown(kind, value)) return all.filter(each => isKnown(kind, each.value))
  return all
}

/** What these keys alone say: of kinds that no group's close covers. */
export function readKeys(state: LogState, isKnown: IsKnownValue, keys: Iterable<string>): CardFacts {
  const facts = new Map([...keys].map(key => [key, standingsOf(state, key)]))
  const { writings, rows } = knownRows([facts], isKnown)
  return {
    writings,
    rows: <K extends RowKind>(kind: K) =>
      rows.filter(({ parts }) => parts.kind === kind) as unknown as readonly FactRow<K>[],
  }
}

/** What a card is made of. */
export type CardFacts = Pick<Reading, 'rows' | 'writings'>

type Closes = ReadonlyMap<GroupId, ReadonlyMap<string, Json>>

/** What each group's close holds of that group's own facts; scores close with their ball. */
function closedFacts(rows: readonly FactRow[]): Closes {
  const closes = new Map<GroupId, ReadonlyMap<string, Json>>()
  for (const { parts, standings } of rows) {
    if (parts.kind !== 'closeGroup' || parts.group === null) continue
    const close = standings.at(-1)?.value as unknown as FactValues['closeGroup'] | undefined
    closes.set(parts.group, new Map(close?.facts.filter(([key]) => groupOfKey(key) === parts.group)))
  }
  return closes
}

function closeOver(closes: Closes, { key, parts }: Pick<FactRow, 'key' | 'parts'>): ReadonlyMap<string, Json> | null {
  if (closes.size === 0) return null
  const group = parts.kind === 'score' ? null : groupOfKey(key)
  return group === null ? null : (closes.get(group) ?? null)
}

function lateOf({ key, standings }: FactRow, closed: Json): LateFact[] {
  const text = canonicalJson(closed)
  return standings.filter(({ value }) => canonicalJson(value) !== text).map(standing => ({ key, standing, closed }))
}

/** Closed facts whose current value somebody has withdrawn: the close still holds them. */
function closedAndGone(closes: Closes, rows: readonly FactRow[]): FactRow[] {
  if (closes.size === 0) return []
  const there = new Set(rows.map(({ key }) => key))
  const gone: FactRow[] = []
  for (const facts of closes.values()) {
    for (const key of facts.keys()) {
      const parts = parseKey(key)
      if (parts !== null && parts.kind !== 'score' && !there.has(key))
        gone.push(rowOf({ key, parts, standings: [] }, null))
    }
  }
  return gone
}

/** The id that a key of this kind names. */
export const ballOf = ({ parts }: { readonly parts: KeyParts }): BallId => parts.ball as BallId
