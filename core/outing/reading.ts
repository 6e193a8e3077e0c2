import { isDisputed, type LogState, type Standing, standingsOf } from '#core/log/fold.ts'
import { groupOfKey } from '#core/log/op.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'
import type { FactKind, FactValues, KeyParts } from './facts.ts'
import { parseKey } from './keys.ts'
import type { Doubt, LateFact } from './outing.ts'

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

/** The current facts by kind, in order of their keys, with the groups' closes laid over them. */
export interface Reading {
  rows<K extends FactKind>(kind: K): readonly FactRow<K>[]
  readonly doubts: readonly Doubt[]
  readonly lateFacts: readonly LateFact[]
  readonly newer: readonly string[]
}

type OpenRow = Omit<FactRow, 'value'>

export function readFacts(state: LogState, isKnown: IsKnownValue): Reading {
  const { rows, newer } = knownRows(state, isKnown)
  const closes = closedFacts(rows)
  const kept = new Map<FactKind, FactRow[]>()
  const doubts: Doubt[] = []
  const lateFacts: LateFact[] = []
  const keep = (row: OpenRow, value: Json): void => {
    // Known values have their kind's shape: `isKnown` said so.
    const { key, parts, standings } = row
    const full = { key, parts, standings, value: value as unknown as FactRow['value'] }
    const others = kept.get(row.parts.kind)
    if (others) others.push(full)
    else kept.set(row.parts.kind, [full])
  }
  for (const row of rows) {
    const close = closeOver(closes, row)
    if (close) {
      const closed = close.get(row.key) ?? null
      lateFacts.push(...lateOf(row, closed))
      if (closed !== null && isKnown(row.parts.kind, closed)) keep(row, closed)
      continue
    }
    if (row.parts.kind !== 'score' && isDisputed(row.standings)) doubts.push(row)
    keep(row, row.standings.at(-1)?.value ?? null)
  }
  for (const row of closedAndGone(closes, rows)) {
    const closed = closeOver(closes, row)?.get(row.key) ?? null
    if (closed !== null && isKnown(row.parts.kind, closed)) keep(row, closed)
  }
  return {
    rows: <K extends FactKind>(kind: K) => (kept.get(kind) ?? []) as unknown as readonly FactRow<K>[],
    doubts,
    lateFacts,
    newer,
  }
}

function knownRows(state: LogState, isKnown: IsKnownValue): { rows: OpenRow[]; newer: string[] } {
  const rows: OpenRow[] = []
  const newer: string[] = []
  for (const key of [...state.current.keys()].sort()) {
    const all = standingsOf(state, key)
    const parts = parseKey(key)
    const standings = parts === null ? [] : knownOf(all, parts.kind, isKnown)
    if (standings.length < all.length) newer.push(key)
    if (parts !== null && standings.length > 0) rows.push({ key, parts, standings })
  }
  return { rows, newer }
}

/** The list itself where all are known: there are thousands of keys, and nearly always one value each. */
function knownOf(all: readonly Standing[], kind: FactKind, isKnown: IsKnownValue): readonly Standing[] {
  const known = all.filter(({ value }) => isKnown(kind, value))
  return known.length === all.length ? all : known
}

/** The rows of these kinds that name one of the balls: scores, places and closes of balls, which no group's close covers. */
export function readBalls(
  state: LogState,
  isKnown: IsKnownValue,
  kinds: ReadonlySet<FactKind>,
  balls: ReadonlySet<BallId>,
): Pick<Reading, 'rows'> {
  const rows: FactRow[] = []
  for (const [key, all] of state.current) {
    const parts = parseKey(key)
    if (parts === null || parts.ball === null || !kinds.has(parts.kind) || !balls.has(parts.ball)) continue
    const standings = knownOf(all, parts.kind, isKnown)
    const value = standings.at(-1)?.value
    // Known values have their kind's shape: `isKnown` said so.
    if (value !== undefined) rows.push({ key, parts, standings, value: value as unknown as FactRow['value'] })
  }
  rows.sort((a, b) => (a.key < b.key ? -1 : 1))
  return {
    rows: <K extends FactKind>(kind: K) =>
      rows.filter(({ parts }) => parts.kind === kind) as unknown as readonly FactRow<K>[],
  }
}

type Closes = ReadonlyMap<GroupId, ReadonlyMap<string, Json>>

/** What each group's close holds of that group's own facts; scores close with their ball. */
function closedFacts(rows: readonly OpenRow[]): Closes {
  const closes = new Map<GroupId, ReadonlyMap<string, Json>>()
  for (const { parts, standings } of rows) {
    if (parts.kind !== 'closeGroup' || parts.group === null) continue
    const close = standings.at(-1)?.value as unknown as FactValues['closeGroup'] | undefined
    closes.set(parts.group, new Map(close?.facts.filter(([key]) => groupOfKey(key) === parts.group)))
  }
  return closes
}

function closeOver(closes: Closes, { key, parts }: Pick<OpenRow, 'key' | 'parts'>): ReadonlyMap<string, Json> | null {
  const group = closes.size === 0 || parts.kind === 'score' ? null : groupOfKey(key)
  return group === null ? null : (closes.get(group) ?? null)
}

function lateOf({ key, standings }: OpenRow, closed: Json): LateFact[] {
  const text = canonicalJson(closed)
  return standings.filter(({ value }) => canonicalJson(value) !== text).map(standing => ({ key, standing, closed }))
}

/** Closed facts whose current value somebody has withdrawn: the close still holds them. */
function closedAndGone(closes: Closes, rows: readonly OpenRow[]): OpenRow[] {
  const there = new Set(rows.map(({ key }) => key))
  const gone: OpenRow[] = []
  for (const facts of closes.values()) {
    for (const key of facts.keys()) {
      const parts = parseKey(key)
      if (parts !== null && parts.kind !== 'score' && !there.has(key)) gone.push({ key, parts, standings: [] })
    }
  }
  return gone
}

/** The id that a key of this kind names. */
export const ballOf = ({ parts }: { readonly parts: KeyParts }): BallId => parts.ball as BallId
