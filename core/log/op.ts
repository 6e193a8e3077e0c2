import type { DeviceId, GroupId, LogId, OpId } from '#core/values/ids.ts'
import { canonicalJson, type Json } from '#core/values/json.ts'

/** As a fact's value it replaces and leaves nothing: delete. */
export const withdrawn = null

/** One statement of an op: under `key` the value is now `value`, in place of what the named ops said under this key. */
export interface Fact {
  readonly key: string
  readonly value: Json
  /** Only the facts under this same key are replaced; other facts of the named ops stay. */
  readonly replaces: readonly OpId[]
}

/** One whole act of one device: stored whole or not at all. */
export interface Op {
  readonly log: LogId
  /** The group whose keys it writes, or null for an act of the desk. */
  readonly scope: GroupId | null
  readonly device: DeviceId
  /** Counts 1, 2, 3 … per log and device; spent even when refused. */
  readonly n: number
  /** One more than the largest seen; orders ties, never truth. */
  readonly tick: number
  /** The phone's clock, milliseconds since 1970: shown, never compared. */
  readonly at: number
  /** Names the act in the history. */
  readonly act: string
  readonly facts: readonly Fact[]
}

/** Where a tick stays once it is there: a poisoned one spoils a tie-break, never a score. */
export const lastTick = 2 ** 31 - 1

export const nextTick = (largestSeen: number): number => Math.min(largestSeen + 1, lastTick)

export const opId = (device: string, n: number): OpId => `${device}.${n}` as OpId

export const opIdOf = (op: Pick<Op, 'device' | 'n'>): OpId => opId(op.device, op.n)

/** `device.n` taken apart. */
export function partsOfOpId(id: OpId): { readonly device: DeviceId; readonly n: number } {
  const dot = id.lastIndexOf('.')
  return { device: id.slice(0, dot) as DeviceId, n: Number(id.slice(dot + 1)) }
}

/** By (tick, device, n): the order in which ops are told. */
export function compareOps(a: Op, b: Op): number {
  if (a.tick !== b.tick) return a.tick - b.tick
  if (a.device !== b.device) return a.device < b.device ? -1 : 1
  return a.n - b.n
}

/** The text that is stored and passed on; the same identity never has two. */
export const textOfOp = (op: Op): string => canonicalJson(op as unknown as Json)

/** The group a key belongs to (`g/<group>/…`), or null: the desk alone writes it. */
export function groupOfKey(key: string): GroupId | null {
  if (!key.startsWith('g/')) return null
  const end = key.indexOf('/', 2)
  return key.slice(2, end === -1 ? undefined : end) as GroupId
}

/** True for a key under `g/<group>/`, with no text made to find out. */
export const isKeyOf = (group: GroupId | null, key: string): boolean =>
  group !== null && key.startsWith('g/') && key.startsWith(group, 2) && key[2 + group.length] === '/'

export const opFaults = ['no facts', 'key twice', 'key outside the scope'] as const
export type OpFault = (typeof opFaults)[number]

/** What no op may do, whoever carries it; null when it is sound. `fact` is the index of the fact at fault. */
export function faultOfOp(op: Op): { readonly code: OpFault; readonly fact: number } | null {
  if (op.facts.length === 0) return { code: 'no facts', fact: 0 }
  const keys = new Set<string>()
  for (const [fact, { key }] of op.facts.entries()) {
    if (keys.has(key)) return { code: 'key twice', fact }
    keys.add(key)
    if (op.scope !== null && groupOfKey(key) !== op.scope) return { code: 'key outside the scope', fact }
  }
  return null
}
