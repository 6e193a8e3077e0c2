import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import type { LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { databaseFile } from './database-file.ts'
import { withDatabase } from './driver.ts'
import { lineOf } from './sound.ts'

/** A log as whoever runs the server sees it. */
export interface KeptLog {
  readonly log: LogId
  readonly ops: number
  /** When something was last stored in it, milliseconds since 1970. */
  readonly lastAt: number
}

/**
 * The logs in a data folder, the last written first; a server may run. `textsOf` gives a log's ops while `read` goes on.
 * The failure is one line for whoever runs it.
 */
export async function readKeptLogs<T>(
  folder: string,
  read: (kept: KeptLog, textsOf: () => readonly string[]) => T,
): Promise<Result<readonly T[], string>> {
  const path = databaseFile(resolve(folder))
  if (!existsSync(path))
    return err(`The data folder ${resolve(folder)} holds no database; set DATA_DIR to the server's.`)
  try {
    return await withDatabase(path, { readOnly: true }, database => {
      const rows = database
        .prepare('SELECT log, seq AS ops, ops.at AS lastAt FROM logs JOIN ops USING (log, seq) ORDER BY lastAt DESC')
        .all() as unknown as KeptLog[]
      const texts = database.prepare('SELECT text FROM ops WHERE log = ? ORDER BY seq')
      return ok(
        rows.map(row => read({ ...row }, () => (texts.all(row.log) as { text: string }[]).map(({ text }) => text))),
      )
    })
  } catch (error) {
    return err(`The database ${path} cannot be read: ${lineOf(error)}.`)
  }
}
