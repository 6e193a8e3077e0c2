import type { Database } from './driver.ts'

/** All of it or nothing. */
export function inTransaction<T>(database: Database, work: () => T): T {
  database.exec('BEGIN IMMEDIATE')
  try {
    const result = work()
    database.exec('COMMIT')
    return result
  } catch (error) {
    rollBack(database)
    throw error
  }
}

function rollBack(database: Database): void {
  try {
    database.exec('ROLLBACK')
  } catch {
    // SQLite has rolled back by itself, as it does when the disk is full.
  }
}
