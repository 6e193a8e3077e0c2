import { type Op, opIdOf } from '#core/log/op.ts'
import type { OpId } from '#core/values/ids.ts'
import { parseOpShape } from '#shared/op.ts'
import type { DownOp } from './answers.ts'
import { type HeldOp, noMark } from './held-op.ts'
import { type Holding, withOwnNumbers } from './holding.ts'
import { type Change, isOwnName } from './log-store.ts'
import { isWaiting } from './memory-store.ts'

interface Arrival {
  readonly op: Op
  readonly down: DownOp
}

/** The sound ops of this log among what came down. One of another shape is a later version's and no loss: the server holds it. */
function arrivalsOf({ record }: Holding, ops: readonly DownOp[]): Arrival[] {
  return ops.flatMap(down => {
    const parsed = parseOpShape(down[1])
    return parsed.ok && parsed.value.log === record.log ? [{ op: parsed.value, down }] : []
  })
}

/** This phone's own waiting ops whose identity came down with other content. */
export const takenAmong = (holding: Holding, ops: readonly DownOp[]): OpId[] =>
  arrivalsOf(holding, ops).flatMap(({ op, down }) => {
    const held = holding.ops.get(opIdOf(op))
    const isTaken = held && held.text !== down[1] && isWaiting(held) && isOwnName(holding.record, op.device)
    return isTaken ? [opIdOf(op)] : []
  })

/** Puts in what came down: it is in the fold, whatever this phone was told of it before. */
export function receivedChange(holding: Holding, ops: readonly DownOp[], now: number): Change {
  let place = holding.record.nextPlace
  const put: HeldOp[] = []
  for (const { op, down } of arrivalsOf(holding, ops)) {
    const held = holding.ops.get(opIdOf(op))
    if (held && isKnown(held, down)) continue
    put.push(heldOfDown(op, down, held?.place ?? place))
    if (!held) place++
  }
  return {
    put,
    record: record => ({
      ...withOwnNumbers(record, put),
      nextPlace: Math.max(record.nextPlace, place),
      at: put.length > 0 ? now : record.at,
    }),
  }
}

const isKnown = (held: HeldOp, [seq, text]: DownOp): boolean =>
  held.text === text && held.mark.kind === 'none' && held.seq === seq && held.serverAt !== null

const heldOfDown = (op: Op, [seq, text, serverAt, carrier]: DownOp, place: number): HeldOp => ({
  op,
  text,
  seq,
  serverAt,
  carrier,
  mark: noMark,
  place,
})
