import type { StoreTrouble } from './store.ts'

/** SQLite's primary result code of an error; 0 for one that is none of SQLite's. */
export const resultCodeOf = (error: unknown): number =>
  typeof error === 'object' && error !== null && 'errcode' in error ? Number(error.errcode) & 0xff : 0

/** READONLY, IOERR, FULL and CANTOPEN: the disk is at fault. */
const diskCodes = new Set([8, 10, 13, 14])

export const troubleOf = (error: unknown): StoreTrouble => (diskCodes.has(resultCodeOf(error)) ? 'disk' : 'database')
