import { readFileSync } from 'node:fs'
import type { Fault } from '#core/values/result.ts'
import type { InputFault } from '#tests/reference/calculation.ts'
import { type CheckFileFault, parseCheckFile } from './check-value.ts'
import { runCheckValues } from './run.ts'

/** What a command line prints and ends with. */
export interface CommandOutcome {
  /** 0: all passed; 1: one failed; 2: not a file of check values. */
  readonly status: 0 | 1 | 2
  readonly stdout: string
  readonly stderr: string
}

const faultSentences: Record<CheckFileFault | InputFault, string> = {
  'not-json': 'this is not JSON',
  'not-a-list': 'a list of check values must stand here',
  'missing-text': 'a text must stand here',
  'missing-record': 'an object must stand here, and not an empty one',
  'id-twice': 'another check value has the same id',
  'wrong-input': 'this is not what the calculation takes',
}

/** `check-values FILE`: the report as JSON, or one line that says what is wrong with the call or the file. */
export function checkValuesCommand(args: readonly string[]): CommandOutcome {
  const [file, ...others] = args
  if (file === undefined || others.length > 0) return badFile('usage: npm run --silent check-values -- FILE')
  let text: string
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    return badFile(`${file}: cannot be read (${error instanceof Error && 'code' in error ? error.code : 'unknown'})`)
  }
  const values = parseCheckFile(text)
  if (!values.ok) return badFile(formatFault(file, values.error))
  const report = runCheckValues(values.value)
  if (!report.ok) return badFile(formatFault(file, report.error))
  const stdout = `${JSON.stringify(report.value, null, 2)}\n`
  return { status: report.value.failed.length > 0 ? 1 : 0, stdout, stderr: '' }
}

const formatFault = (file: string, { path, code }: Fault<CheckFileFault | InputFault>): string =>
  [file, path, faultSentences[code]].filter(part => part !== '').join(': ')

const badFile = (line: string): CommandOutcome => ({ status: 2, stdout: '', stderr: `check-values: ${line}\n` })
