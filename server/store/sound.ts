import type { Database } from './driver.ts'

/** The first fault that SQLite finds in the file, or null. Reads the whole file once. */
export function damageOf(database: Database): string | null {
  const row = database.prepare('PRAGMA quick_check(1)').get() as { quick_check: string }
  return row.quick_check === 'ok' ? null : row.quick_check.replaceAll(/\s+/g, ' ')
}

/** NOTADB and CORRUPT: the file is at fault, not the disk or another program. */
export function isDamage(error: unknown): boolean {
  const code = typeof error === 'object' && error !== null && 'errcode' in error ? Number(error.errcode) & 0xff : 0
  return code === 11 || code === 26
}

/** The first line of what went wrong, without its full stop. */
export const lineOf = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split('\n', 1)[0]?.replace(/\.$/, '') ?? ''
