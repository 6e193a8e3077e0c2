import { err, type Fault, ok, type Result } from '#core/values/result.ts'
import { isList, isRecord } from './answer.ts'

/** One published or derived value: what goes in, and what must come out. Other fields of the file are for readers. */
export interface CheckValue {
  readonly id: string
  /** Names the calculation. */
  readonly op: string
  readonly input: Readonly<Record<string, unknown>>
  readonly expected: Readonly<Record<string, unknown>>
}

export const checkFileFaults = ['not-json', 'not-a-list', 'missing-text', 'missing-record', 'id-twice'] as const
export type CheckFileFault = (typeof checkFileFaults)[number]

/** The check values of a file's text; the first fault where it does not hold a list of them. */
export function parseCheckFile(text: string): Result<CheckValue[], Fault<CheckFileFault>> {
  let rows: unknown
  try {
    rows = JSON.parse(text)
  } catch {
    return err({ path: '', code: 'not-json' })
  }
  if (!isList(rows)) return err({ path: '', code: 'not-a-list' })
  const values: CheckValue[] = []
  const ids = new Set<string>()
  for (const [at, row] of rows.entries()) {
    const parsed = parseCheckValue(row, `[${at}]`)
    if (!parsed.ok) return parsed
    if (ids.has(parsed.value.id)) return err({ path: `[${at}].id`, code: 'id-twice' })
    ids.add(parsed.value.id)
    values.push(parsed.value)
  }
  return ok(values)
}

function parseCheckValue(row: unknown, path: string): Result<CheckValue, Fault<CheckFileFault>> {
  if (!isRecord(row)) return err({ path, code: 'missing-record' })
  const { id, input, expected } = row
  if (!isText(id)) return err({ path: `${path}.id`, code: 'missing-text' })
  if (!isRecord(input)) return err({ path: `${path}.input`, code: 'missing-record' })
  if (!isText(input.op)) return err({ path: `${path}.input.op`, code: 'missing-text' })
  // An empty record would pass whatever the answer is.
  if (!isRecord(expected) || Object.keys(expected).length === 0) {
    return err({ path: `${path}.expected`, code: 'missing-record' })
  }
  return ok({ id, op: input.op, input, expected })
}

const isText = (value: unknown): value is string => typeof value === 'string' && value !== ''
