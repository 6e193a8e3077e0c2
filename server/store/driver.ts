import { isBuiltin } from 'node:module'
import type { DatabaseSyncInstance } from '@photostructure/sqlite'
import { StartFault } from '../start-fault.ts'

export type Database = DatabaseSyncInstance
interface Opening {
  readonly readOnly: boolean
}
type Driver = { readonly DatabaseSync: new (path: string, options?: Opening) => Database }

/** The `node:sqlite` API: Node's own where it has one, else a package with the same API. */
export async function loadDriver(): Promise<Driver> {
  const name: string = isBuiltin('node:sqlite') ? 'node:sqlite' : '@photostructure/sqlite'
  try {
    return (await import(/* @vite-ignore */ name)) as Driver
  } catch (error) {
    const reason = error instanceof Error ? (error.message.split('\n', 1)[0] ?? '') : String(error)
    throw new StartFault(`The database module ${name} does not load on this machine; run npm ci again (${reason}).`)
  }
}

/** Opens a database file for `work`, and closes it however that ends. */
export async function withDatabase<T>(path: string, options: Opening, work: (database: Database) => T): Promise<T> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(path, options)
  try {
    return work(database)
  } finally {
    database.close()
  }
}
