import type { Fault, Result } from '#core/values/result.ts'
import type { Answer } from '#scripts/check-values/answer.ts'
import { allowanceOps } from './allowance-ops.ts'
import type { Calculation, InputFault } from './calculation.ts'
import { countbackOps } from './countback-ops.ts'
import { courseOps } from './course-ops.ts'
import { differentialOps } from './differential-ops.ts'
import { drawOps } from './draw-ops.ts'
import { formatOps } from './format-ops.ts'
import { gameOps } from './game-ops.ts'
import { handicapOps } from './handicap-ops.ts'
import { indexOps } from './index-ops.ts'
import { recordOps } from './record-ops.ts'
import { rulingOps } from './ruling-ops.ts'

/** Every calculation of the published figures, under the name the check values use. */
const publishedOps: ReadonlyMap<string, Calculation> = new Map([
  ...handicapOps,
  ...allowanceOps,
  ...courseOps,
  ...recordOps,
  ...differentialOps,
  ...indexOps,
  ...formatOps,
  ...gameOps,
  ...countbackOps,
  ...rulingOps,
  ...drawOps,
])

/** The answer to one check value, from its input alone; `null` when core does not have the calculation. */
export const answerOf = (op: string, input: unknown): Result<Answer, Fault<InputFault>> | null =>
  publishedOps.get(op)?.(input) ?? null
