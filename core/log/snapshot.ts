import type { DeviceId, OpId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { compareStandings, factsOf, inParts, type LogState, type Standing } from './fold.ts'
import type { Ranges } from './ranges.ts'

/** A log's state as plain columns: row i of the facts is (keys[i], values[i], ops[i], ticks[i], ats[i]). */
export interface Snapshot {
  readonly keys: readonly string[]
  readonly values: readonly Json[]
  readonly ops: readonly OpId[]
  readonly ticks: readonly number[]
  readonly ats: readonly number[]
  readonly buried: readonly (readonly [op: OpId, keys: readonly string[]])[]
  readonly here: readonly (readonly [device: DeviceId, ranges: Ranges])[]
  readonly tick: number
}

const byText = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => (a < b ? -1 : 1)

/** The same state always gives the same snapshot, whatever order its ops came in. */
export function snapshotOf(state: LogState): Snapshot {
  const rows = factsOf(state)
    .sort(byText)
    .flatMap(([, standings]) => standings)
  return {
    keys: rows.map(row => row.key),
    values: rows.map(row => row.value),
    ops: rows.map(row => row.op),
    ticks: rows.map(row => row.tick),
    ats: rows.map(row => row.at),
    buried: [...state.buried].map(([op, keys]) => [op, [...keys].sort()] as const).sort(byText),
    here: [...state.here].sort(byText),
    tick: state.tick,
  }
}

/** The state that a snapshot holds; ops fold onto it as onto any other. */
export function stateOfSnapshot(snapshot: Snapshot): LogState {
  const byKey = new Map<string, Standing[]>()
  for (const [row, key] of snapshot.keys.entries()) {
    const standings = byKey.get(key) ?? []
    standings.push(standingOfRow(snapshot, row))
    byKey.set(key, standings)
  }
  for (const standings of byKey.values()) standings.sort(compareStandings)
  return {
    current: inParts(byKey),
    buried: new Map(snapshot.buried.map(([op, keys]) => [op, new Set(keys)])),
    here: new Map(snapshot.here),
    tick: snapshot.tick,
  }
}

const standingOfRow = (snapshot: Snapshot, row: number): Standing => ({
  key: snapshot.keys[row] ?? '',
  value: snapshot.values[row] ?? null,
  op: snapshot.ops[row] as OpId,
  tick: snapshot.ticks[row] ?? 0,
  at: snapshot.ats[row] ?? 0,
})
