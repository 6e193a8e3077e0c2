import { err, type Fault, ok, type Result } from '#core/values/result.ts'
import type { InputFault } from '#tests/reference/calculation.ts'
import { answerOf } from '#tests/reference/published-ops.ts'
import { isExpected, printAnswer } from './answer.ts'
import type { CheckValue } from './check-value.ts'

export interface CheckReport {
  readonly passed: number
  readonly failed: readonly FailedValue[]
  /** Ids whose calculation this product does not have. */
  readonly unsupported: readonly string[]
}

export interface FailedValue {
  readonly id: string
  readonly expected: unknown
  readonly got: unknown
}

/** Works out every value from its input alone and compares; a fault where an input is not what its op takes. */
export function runCheckValues(values: readonly CheckValue[]): Result<CheckReport, Fault<InputFault>> {
  let passed = 0
  const failed: FailedValue[] = []
  const unsupported: string[] = []
  for (const [at, { id, op, input, expected }] of values.entries()) {
    const answer = answerOf(op, input)
    if (answer === null) unsupported.push(id)
    else if (!answer.ok) return err({ ...answer.error, path: `[${at}].input${answer.error.path}` })
    else if (isExpected(answer.value, expected)) passed += 1
    else failed.push({ id, expected, got: printAnswer(answer.value) })
  }
  return ok({ passed, failed, unsupported })
}
