import type { Fault, Result } from '#core/values/result.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import type { Calculation, InputFault } from './calculation.ts'
import { formatOps } from './format-ops.ts'
import { handicapOps } from './handicap-ops.ts'

/** Every calculation of the published figures that core has, under the name the check values use. */
const publishedOps: ReadonlyMap<string, Calculation> = new Map([...handicapOps, ...formatOps])

/** The answer to one check value, from its input alone; `null` when core does not have the calculation. */
export const answerOf = (op: string, input: unknown): Result<Answer, Fault<InputFault>> | null =>
  publishedOps.get(op)?.(input) ?? null
