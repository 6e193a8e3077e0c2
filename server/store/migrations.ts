import { StartFault } from '../start-fault.ts'
import type { Database } from './driver.ts'
import { inTransaction } from './transaction.ts'

/** Each brings the schema one version on; the first makes version 1. Only ever added to. */
export const steps: readonly string[] = [
  `
  CREATE TABLE logs (log TEXT PRIMARY KEY, era TEXT NOT NULL, seq INTEGER NOT NULL, at INTEGER NOT NULL) STRICT;
  CREATE TABLE ops (
    log TEXT NOT NULL, seq INTEGER NOT NULL, device TEXT NOT NULL, n INTEGER NOT NULL, scope TEXT,
    text TEXT NOT NULL, at INTEGER NOT NULL, carrier TEXT,
    -- Phones count on side by side: n before device keeps what they write together on few pages.
    UNIQUE (log, seq), UNIQUE (log, n, device)
  ) STRICT;
  CREATE TABLE grants (
    log TEXT NOT NULL, kind TEXT NOT NULL, name TEXT NOT NULL, hash TEXT NOT NULL, role TEXT NOT NULL, grp TEXT,
    PRIMARY KEY (log, kind, name)
  ) STRICT, WITHOUT ROWID;
  CREATE TABLE voids (log TEXT NOT NULL, kind TEXT NOT NULL, name TEXT NOT NULL, PRIMARY KEY (log, kind, name))
    STRICT, WITHOUT ROWID;
  CREATE TABLE offered (
    log TEXT NOT NULL, device TEXT NOT NULL, n INTEGER NOT NULL, text TEXT NOT NULL, carrier TEXT NOT NULL,
    PRIMARY KEY (log, device, n)
  ) STRICT;
  CREATE TABLE tombstones (log TEXT PRIMARY KEY, at INTEGER NOT NULL) STRICT;
  `,
]

export const schemaVersion = steps.length

/** Brings the schema forward in one transaction. A newer one is left as it is and refused. */
export function migrate(database: Database, now: number, to: readonly string[] = steps): void {
  database.exec('CREATE TABLE IF NOT EXISTS schema (version INTEGER PRIMARY KEY, at INTEGER NOT NULL) STRICT')
  const found = versionOf(database)
  if (found > to.length) {
    throw new StartFault(
      `The data was written by a newer version of Six Threes (schema ${found}, this one knows ${to.length}). ` +
        'Nothing was changed; start the newer version.',
    )
  }
  inTransaction(database, () => {
    for (const [index, step] of to.entries()) {
      if (index < found) continue
      database.exec(step)
      database.prepare('INSERT INTO schema (version, at) VALUES (?, ?)').run(index + 1, now)
    }
  })
}

/** The version of the schema that the file has; 0 before the first step. */
export const versionOf = (database: Database): number =>
  Number((database.prepare('SELECT max(version) AS version FROM schema').get() as { version: number | null }).version)
