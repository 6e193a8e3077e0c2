import * as z from 'zod/mini'
import { type Op, opIdOf, textOfOp } from '#core/log/op.ts'
import type { LogId } from '#core/values/ids.ts'
import type { Fault } from '#core/values/result.ts'
import { logId } from './atoms.ts'
import { type OpProblem, opSchema, parseOp } from './op.ts'
import { proves } from './proof.ts'

/** The whole outing file: every op of the log. */
export interface WholeOuting {
  readonly sixThrees: 'outing'
  readonly version: 1
  readonly form: 'whole'
  readonly log: LogId
  readonly ops: readonly Op[]
}

export const wholeOutingSchema = proves<WholeOuting>()(
  z.strictObject({
    sixThrees: z.literal('outing'),
    version: z.literal(1),
    form: z.literal('whole'),
    log: logId,
    ops: z.array(opSchema),
  }),
)

export type WholeFault = Fault<OpProblem['code'] | 'other log' | 'op twice'>

/** What is wrong with the ops themselves. A newer version's kind of fact is none: it is kept and left out of the sums. */
export function faultsOfWhole({ log, ops }: WholeOuting): WholeFault[] {
  const texts = new Map<string, string>()
  return ops.flatMap((op, place): WholeFault[] => {
    const path = `ops[${place}]`
    const text = textOfOp(op)
    const parsed = parseOp(text)
    if (!parsed.ok && parsed.error.code !== 'newer') {
      return [{ path: parsed.error.path === '' ? path : `${path}.${parsed.error.path}`, code: parsed.error.code }]
    }
    if (op.log !== log) return [{ path: `${path}.log`, code: 'other log' }]
    const known = texts.get(opIdOf(op)) ?? text
    texts.set(opIdOf(op), known)
    return known === text ? [] : [{ path, code: 'op twice' }]
  })
}
