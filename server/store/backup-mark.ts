import type { Database } from './driver.ts'

/** What a backup says of itself; a copied database file has no such row. */
export interface BackupMark {
  /** When it was made, milliseconds since 1970. */
  readonly at: number
  /** The data folder that it was made of. */
  readonly source: string
  readonly schema: number
  readonly logs: number
  readonly ops: number
}

const counted = '(SELECT count(*) FROM logs) AS logs, (SELECT count(*) FROM ops) AS ops'

export const countsOf = (database: Database): Pick<BackupMark, 'logs' | 'ops'> => ({
  ...(database.prepare(`SELECT ${counted}`).get() as { logs: number; ops: number }),
})

/** Written last, when everything else in the file has been checked. */
export function writeMark(database: Database, { at, source, schema, logs, ops }: BackupMark): void {
  database.exec(
    `CREATE TABLE backup (
      at INTEGER NOT NULL, source TEXT NOT NULL, schema INTEGER NOT NULL, logs INTEGER NOT NULL, ops INTEGER NOT NULL
    ) STRICT`,
  )
  database.prepare('INSERT INTO backup VALUES (?, ?, ?, ?, ?)').run(at, source, schema, logs, ops)
}

/** Null for a file that no backup command has finished. */
export function readMark(database: Database): BackupMark | null {
  if (!database.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'backup'").get()) return null
  const row = database.prepare('SELECT at, source, schema, logs, ops FROM backup').get() as BackupMark | undefined
  return row ? { ...row } : null
}

export const removeMark = (database: Database): void => database.exec('DROP TABLE backup')
