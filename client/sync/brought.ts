import { opIdOf } from '#core/log/op.ts'
import type { LogId } from '#core/values/ids.ts'
import { parseOpShape } from '#shared/op.ts'
import { type HeldOp, type Mark, waitingMark } from './held-op.ts'
import { type Holding, withOwnNumbers } from './holding.ts'
import type { Change, LogRecord } from './log-store.ts'

/** An op that came by file or hand; null when it is none of this log. */
export function heldOfText(log: LogId, text: string, place: number, mark: Mark): HeldOp | null {
  const parsed = parseOpShape(text)
  if (!parsed.ok || parsed.value.log !== log) return null
  return { op: parsed.value, text, seq: null, serverAt: null, carrier: null, mark, place }
}

/** Puts in what is not held yet, to be sent on. What this phone said and has forgotten since is its own again. */
export function broughtChange({ ops, record }: Holding, texts: readonly string[]): Change {
  const put: HeldOp[] = []
  for (const text of texts) {
    const held = heldOfText(record.log, text, record.nextPlace + put.length, waitingMark)
    if (held && !ops.has(opIdOf(held.op))) put.push(held)
  }
  const nextPlace = record.nextPlace + put.length
  return {
    put,
    record: (current: LogRecord) => ({
      ...withOwnNumbers(current, put),
      nextPlace: Math.max(current.nextPlace, nextPlace),
    }),
  }
}
