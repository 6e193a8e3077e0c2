import type { PlainFault } from '#core/outing/plain-fault.ts'
import { faultsOfPlain } from '#core/outing/plain-faults.ts'
import type { PlainOuting } from '#core/outing/plain-file.ts'
import { err, type Fault, ok, type Result } from '#core/values/result.ts'
import { isTooDeep } from './op.ts'
import { plainOutingSchema } from './plain-outing.ts'
import { faultsOfIssues, type SchemaFault } from './schema-faults.ts'
import { faultsOfWhole, type WholeFault, type WholeOuting, wholeOutingSchema } from './whole-outing.ts'

export type OutingFile = PlainOuting | WholeOuting

/** What can be wrong with a file as a whole. */
export const fileFaults = ['not json', 'too large', 'not an outing file', 'newer version', 'unknown form'] as const
export type FileFault = Fault<(typeof fileFaults)[number]>
export type OutingFault = FileFault | SchemaFault | PlainFault | WholeFault

/** Characters: a day of 144 players takes a few million. */
const longestFile = 100_000_000
const deepestFile = 12

/** Reads either form of the outing file; every fault names the path of its field. */
export function parseOutingFile(text: string): Result<OutingFile, readonly OutingFault[]> {
  if (text.length > longestFile || isTooDeep(text, deepestFile)) return err([{ path: '', code: 'too large' }])
  let value: unknown
  try {
    // Editors put a byte order mark before a text.
    value = JSON.parse(text.replace(/^\ufeff/, ''))
  } catch {
    return err([{ path: '', code: 'not json' }])
  }
  const head = faultOfHead(value)
  if (head !== null) return err([head])
  return (value as OutingFile).form === 'plain' ? parsePlain(value) : parseWhole(value)
}

function faultOfHead(value: unknown): FileFault | null {
  if (typeof value !== 'object' || value === null) return { path: '', code: 'not an outing file' }
  const { sixThrees, version, form } = value as Record<string, unknown>
  if (sixThrees !== 'outing') return { path: 'sixThrees', code: 'not an outing file' }
  if (version !== 1) return { path: 'version', code: 'newer version' }
  return form === 'plain' || form === 'whole' ? null : { path: 'form', code: 'unknown form' }
}

function parsePlain(value: unknown): Result<PlainOuting, readonly OutingFault[]> {
  const parsed = plainOutingSchema.safeParse(value)
  if (!parsed.success) return err(faultsOfIssues(parsed.error.issues, value))
  const file: PlainOuting = parsed.data
  const faults = faultsOfPlain(file)
  return faults.length > 0 ? err(faults) : ok(file)
}

function parseWhole(value: unknown): Result<WholeOuting, readonly OutingFault[]> {
  const parsed = wholeOutingSchema.safeParse(value)
  if (!parsed.success) return err(faultsOfIssues(parsed.error.issues, value))
  const file: WholeOuting = parsed.data
  const faults = faultsOfWhole(file)
  return faults.length > 0 ? err(faults) : ok(file)
}
