import { standingsOf } from '#core/log/fold.ts'
import { type Fact, type Op, opId, opIdOf, textOfOp } from '#core/log/op.ts'
import type { FactValues } from '#core/outing/facts.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, OpId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { factSchemas } from '#shared/facts.ts'
import { type HeldOp, waitingMark } from './held-op.ts'
import { type Holding, waitingOps } from './holding.ts'
import type { Inventions } from './inventions.ts'
import { type Change, isOwnName, type LogRecord } from './log-store.ts'
import { forgetEra } from './sent.ts'

/** A name that this phone takes in a log, with a key of its own. */
export interface NewName {
  readonly device: DeviceId
  readonly key: string
  readonly grant: FactValues['key']
}

/** The change by which this phone takes a new name for ops whose identities were taken; null where it cannot. */
export type Renaming = (holding: Holding, taken: readonly OpId[]) => Required<Change> | null

export const renamingWith =
  (inventions: Inventions): Renaming =>
  (holding, taken) => {
    const name = newNameFor(holding, inventions)
    return name && taken.every(id => holding.ops.has(id))
      ? renamed(holding.record, waitingOps(holding), taken, name)
      : null
  }

/** A new name with the role of the invite that this phone shows; null without one. */
function newNameFor({ state, record }: Holding, { device, secret, hash }: Inventions) {
  if (!record.invite) return null
  const standing = standingsOf(state, makeKey('invite', { invite: record.invite.id })).at(-1)
  const parsed = factSchemas.invite.safeParse(standing?.value)
  if (!parsed.success) return null
  const { role, group } = parsed.data as FactValues['invite']
  const key = secret()
  const grant = { hash: hash(key), role, group, label: record.label, invite: record.invite.id }
  return { device: device(), key, grant }
}

/**
 * The change by which a phone whose ops' identities were taken goes on: it takes a new name, registers a key under it,
 * and writes the acts again, with the waiting ops that name them, directly or through another.
 */
function renamed(
  record: LogRecord,
  waiting: readonly HeldOp[],
  taken: readonly OpId[],
  name: NewName,
): Required<Change> {
  const again = opsAgain(record, waiting, taken)
  const ids = new Map<OpId, OpId>()
  const first = makeFirst(record, again[0], name)
  const written: HeldOp[] = [first]
  for (const held of again) {
    const facts = factsAgain(held.op, ids)
    if (facts.length === 0) continue
    const n = written.length + 1
    ids.set(opIdOf(held.op), opId(name.device, n))
    written.push(heldAgain(record, written.length, { ...held.op, device: name.device, n, facts }))
  }
  return {
    remove: again.map(({ op }) => opIdOf(op)),
    put: written,
    record: current => ({
      // The server holds another op of the name that was taken: only comparing anew brings it here.
      ...forgetEra(current),
      device: name.device,
      formerly: [...(current.formerly ?? []), current.device],
      key: name.key,
      nextN: written.length + 1,
      nextPlace: Math.max(current.nextPlace, record.nextPlace) + written.length,
    }),
  }
}

/** The ops taken, and this phone's waiting ops that name one of them or one already found. */
function opsAgain(record: LogRecord, waiting: readonly HeldOp[], taken: readonly OpId[]): readonly HeldOp[] {
  const found = new Set<OpId>(taken)
  return waiting.filter(({ op }) => {
    const names = op.facts.some(({ replaces }) => replaces.some(id => found.has(id)))
    const isAgain = isOwnName(record, op.device) && (found.has(opIdOf(op)) || names)
    if (isAgain) found.add(opIdOf(op))
    return isAgain
  })
}

/** The old name's key is not written again: the new name has one of its own. */
const factsAgain = (op: Op, ids: ReadonlyMap<OpId, OpId>): Fact[] =>
  op.facts
    .filter(({ key }) => key !== makeKey('key', { device: op.device }))
    .map(fact => ({ ...fact, replaces: fact.replaces.map(id => ids.get(id) ?? id) }))

function makeFirst(record: LogRecord, taken: HeldOp | undefined, { device, grant }: NewName): HeldOp {
  const fact = { key: makeKey('key', { device }), value: grant as unknown as Json, replaces: [] }
  const { tick, at } = taken?.op ?? { tick: 1, at: record.at }
  return heldAgain(record, 0, {
    log: record.log,
    scope: null,
    device,
    n: 1,
    tick,
    at,
    act: 'phone joined',
    facts: [fact],
  })
}

const heldAgain = ({ nextPlace }: LogRecord, offset: number, op: Op): HeldOp => ({
  op,
  text: textOfOp(op),
  seq: null,
  serverAt: null,
  carrier: null,
  mark: waitingMark,
  place: nextPlace + offset,
})
