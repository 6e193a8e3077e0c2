import type { StoreTrouble } from './store.ts'

/** SQLite's primary result codes READONLY, IOERR, FULL and CANTOPEN: the disk is at fault. */
const diskCodes = new Set([8, 10, 13, 14])

export function troubleOf(error: unknown): StoreTrouble {
  const code = typeof error === 'object' && error !== null && 'errcode' in error ? Number(error.errcode) : 0
  return diskCodes.has(code & 0xff) ? 'disk' : 'database'
}
