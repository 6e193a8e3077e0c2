import { existsSync, linkSync, mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { err, ok, type Result } from '#core/values/result.ts'
import { type BackupMark, countsOf, writeMark } from './backup-mark.ts'
import { databaseFile, lastBackupFile, timeInName } from './database-file.ts'
import { withDatabase } from './driver.ts'
import { flushFile } from './flush-file.ts'
import { versionOf } from './migrations.ts'
import { damageOf, isDamage, lineOf } from './sound.ts'
import { inTransaction } from './transaction.ts'

export interface BackupOptions {
  readonly folder: string
  /** Where the backup goes: a file that is not there yet, or a folder; null: `backups` in the data folder. */
  readonly target: string | null
  /** Milliseconds since 1970. */
  readonly now: number
}

export interface Backup {
  readonly file: string
  readonly mark: BackupMark
  readonly bytes: number
}

/**
 * Writes all that is committed into one file, checks it and marks it. The server may run: this only reads, in one
 * transaction of its own, so writers go on and never make it start again. The failure is one line for whoever runs it.
 */
export async function makeBackup({ folder, target, now }: BackupOptions): Promise<Result<Backup, string>> {
  const source = resolve(folder)
  if (!existsSync(databaseFile(source))) {
    return err(`The data folder ${source} holds no database; set DATA_DIR to the folder of the server to back up.`)
  }
  const file = fileOf(source, target, now)
  if (existsSync(file)) return err(`${file} is there already; name a file that is not. Nothing was written.`)
  const unfinished = `${file}.unfinished`
  try {
    mkdirSync(dirname(file), { recursive: true })
    discard(unfinished)
    await copyInto(databaseFile(source), unfinished)
    const mark = await finish(unfinished, { at: now, source })
    publish(unfinished, file)
    noteBackup(source, { at: now, file })
    return ok({ file, mark, bytes: statSync(file).size })
  } catch (error) {
    return err(sentenceOf(error, source, file))
  } finally {
    discard(unfinished)
  }
}

/** An unfinished copy, wherever it was left. */
export function discard(unfinished: string): void {
  for (const companion of ['', '-journal']) {
    if (existsSync(`${unfinished}${companion}`)) rmSync(`${unfinished}${companion}`)
  }
}

function fileOf(source: string, target: string | null, now: number): string {
  const name = `six-threes-${timeInName(now)}.db`
  if (target === null) return join(source, 'backups', name)
  const path = resolve(target)
  const isFolder = /[\\/]$/.test(target) || (existsSync(path) && statSync(path).isDirectory())
  return isFolder ? join(path, name) : path
}

const copyInto = (from: string, to: string): Promise<void> =>
  withDatabase(from, { readOnly: true }, database => {
    database.exec('PRAGMA busy_timeout = 10000')
    database.prepare('VACUUM INTO ?').run(to)
  })

async function finish(file: string, { at, source }: Pick<BackupMark, 'at' | 'source'>): Promise<BackupMark> {
  const marked = await withDatabase(file, { readOnly: false }, database => {
    const damage = damageOf(database)
    if (damage !== null) throw new DamagedSource(damage)
    const mark = { at, source, schema: versionOf(database), ...countsOf(database) }
    inTransaction(database, () => writeMark(database, mark))
    return mark
  })
  flushFile(file)
  return marked
}

/** Under its own name only when it is whole, and never over another file. */
function publish(unfinished: string, file: string): void {
  try {
    linkSync(unfinished, file)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error
    // A file system without links, as on a stick: looked at again just before.
    if (existsSync(file)) throw Object.assign(new Error('it is there already'), { code: 'EEXIST' })
    renameSync(unfinished, file)
  }
  flushFile(dirname(file))
}

/** For the server, which says when the last backup is too old. */
function noteBackup(folder: string, note: { readonly at: number; readonly file: string }): void {
  const path = lastBackupFile(folder)
  writeFileSync(`${path}.new`, `${JSON.stringify(note)}\n`)
  renameSync(`${path}.new`, path)
}

class DamagedSource extends Error {}

function sentenceOf(error: unknown, source: string, file: string): string {
  if (error instanceof DamagedSource || isDamage(error)) {
    return (
      `The database in ${source} is damaged (${lineOf(error)}), so no backup was made. ` +
      'Keep the last good one: stop the server and run npm run restore -- FILE with it.'
    )
  }
  return `The backup ${file} could not be written: ${lineOf(error)}. Nothing of it was kept.`
}
