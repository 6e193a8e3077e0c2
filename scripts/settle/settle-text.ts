import { emptyLog, foldOps, type LogState } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { outingOf } from '#core/outing/outing-of.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { SettleOutput } from '#core/outing/settle-output.ts'
import { settledOf } from '#core/outing/settled.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { ok, type Result } from '#core/values/result.ts'
import { isKnownValue } from '#shared/facts.ts'
import { type OutingFault, type OutingFile, parseOutingFile } from '#shared/outing-file.ts'

/** Every computed result of an outing file of either form, or what is wrong with the file. */
export function settleText(text: string): Result<SettleOutput, readonly OutingFault[]> {
  const parsed = parseOutingFile(text)
  if (!parsed.ok) return parsed
  const outing = outingOf(stateOfFile(parsed.value), isKnownValue)
  return ok(settledOf(outing, resultsOf(outing)))
}

const stateOfFile = (file: OutingFile): LogState =>
  foldOps(emptyLog, file.form === 'whole' ? file.ops : [opOfPlain(file)])

/** A plain file is one act; its writer is the file. */
const opOfPlain = (file: PlainOuting): Op => ({
  log: 'file' as LogId,
  scope: null,
  device: 'file' as DeviceId,
  n: 1,
  tick: 1,
  at: 0,
  act: 'file',
  facts: factsOfPlain(file).map(fact => ({ ...fact, replaces: [] })),
})
