import { closeSync, openSync, statSync, writeSync } from 'node:fs'
import { onTestFinished } from 'vitest'
import { type Database, loadDriver } from '#server/store/driver.ts'
import { openSqliteStore, type SqliteOptions } from '#server/store/sqlite.ts'
import type { Store } from '#server/store/store.ts'

let eras = 0

/** A store in this folder, closed when the test is over. */
export async function openStore(folder: string, changes: Partial<SqliteOptions> = {}): Promise<Store> {
  const newEra = () => `era${String(++eras).padStart(8, '0')}`
  const options = { folder, now: () => 1_000, newEra, warn: () => {}, failed: () => {}, ...changes }
  const store = await openSqliteStore(options)
  onTestFinished(() => store.close())
  return store
}

/** The database itself, past the store; closed when the test is over. */
export async function openDatabase(path: string): Promise<Database> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(path)
  onTestFinished(() => {
    if (database.isOpen) database.close()
  })
  return database
}

/** Zeros over every page but the first, as a bad disk leaves them. */
export function breakPages(path: string): void {
  const handle = openSync(path, 'r+')
  writeSync(handle, Buffer.alloc(statSync(path).size - 4_096), 0, null, 4_096)
  closeSync(handle)
}
