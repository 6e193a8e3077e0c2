import type { Database } from './driver.ts'
import { resultCodeOf } from './trouble.ts'

/** The first fault that SQLite finds in the file, or null. Reads the whole file once. */
export function damageOf(database: Database): string | null {
  const row = database.prepare('PRAGMA quick_check(1)').get() as { quick_check: string }
  return row.quick_check === 'ok' ? null : row.quick_check.replaceAll(/\s+/g, ' ')
}

/** NOTADB and CORRUPT: the file is at fault, not the disk or another program. */
export const isDamage = (error: unknown): boolean => [11, 26].includes(resultCodeOf(error))

/** The first line of what went wrong, without its full stop. */
export const lineOf = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split('\n', 1)[0]?.replace(/\.$/, '') ?? ''
