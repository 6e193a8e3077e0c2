import { closeSync, constants, copyFileSync, existsSync, mkdirSync, openSync, readSync, renameSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import type { LogId } from '#core/values/ids.ts'
import { err, ok, type Result } from '#core/values/result.ts'
import { FolderHeld, StartFault } from '../start-fault.ts'
import { discard } from './backup.ts'
import { type BackupMark, countsOf, readMark, removeMark } from './backup-mark.ts'
import { takeDataFolder } from './data-folder.ts'
import { companions, databaseFile, restoredFile, timeInName } from './database-file.ts'
import { withDatabase } from './driver.ts'
import { flushFile } from './flush-file.ts'
import { migrate, schemaVersion } from './migrations.ts'
import { damageOf, lineOf } from './sound.ts'
import { inTransaction } from './transaction.ts'
import { createWrites } from './writes.ts'

export interface RestoreOptions {
  readonly folder: string
  readonly file: string
  /** Outings that were deleted after the backup was made come back too. */
  readonly bringsBackDeleted: boolean
  /** Milliseconds since 1970. */
  readonly now: number
  readonly newEra: () => string
}

export interface Restored {
  readonly mark: BackupMark
  /** The folder in which the database that was there lies now; null when there was none. */
  readonly keptAside: string | null
  /** Outings of the backup that were deleted since and stay so. */
  readonly stillDeleted: number
  /** False when the old database could not be asked what had been deleted. */
  readonly knowsDeleted: boolean
}

/**
 * Puts a backup in the place of the database. Every log gets a new era, so that phones compare what they hold and fill
 * what the backup lacks. The old database is kept; nothing is deleted. The failure is one line, and nothing has changed.
 */
export async function restoreBackup(options: RestoreOptions): Promise<Result<Restored, string>> {
  const file = resolve(options.file)
  if (!existsSync(file)) return err(`${file} is not there; name a backup made by npm run backup.`)
  try {
    const mark = await soundMark(file)
    if (!mark.ok) return err(`${mark.error} Nothing was changed.`)
    const folder = await takeDataFolder(options.folder)
    try {
      return ok({ mark: mark.value, ...(await putInPlace(folder.path, file, options)) })
    } finally {
      folder.release()
    }
  } catch (error) {
    if (error instanceof FolderHeld) return err(`${error.message} Stop it, then restore. Nothing was changed.`)
    if (error instanceof StartFault) return err(error.message)
    return err(`The backup could not be restored: ${lineOf(error)}.`)
  }
}

/** What the file says of itself, if it is a sound backup that this version can read. */
async function soundMark(file: string): Promise<Result<BackupMark, string>> {
  if (hasLogBeside(file)) return err(copiedLine(file))
  try {
    return await withDatabase(file, { readOnly: true }, database => {
      const mark = readMark(database)
      if (mark === null) return err(copiedLine(file))
      if (mark.schema > schemaVersion) {
        return err(`${file} was made by a newer version of Six Threes; restore it with that version.`)
      }
      const damage = damageOf(database)
      const { logs, ops } = countsOf(database)
      const isWhole = damage === null && logs === mark.logs && ops === mark.ops
      return isWhole ? ok(mark) : err(damagedLine(file, damage ?? `${ops} of ${mark.ops} rows`))
    })
  } catch (error) {
    if (error instanceof StartFault) throw error
    return err(damagedLine(file, lineOf(error)))
  }
}

/** The file's header says so. A backup has none, so it need not be opened, which would make files beside it. */
function hasLogBeside(file: string): boolean {
  const header = Buffer.alloc(20)
  const handle = openSync(file, 'r')
  readSync(handle, header)
  closeSync(handle)
  return header.toString('latin1', 0, 15) === 'SQLite format 3' && header[18] === 2
}

const copiedLine = (file: string): string =>
  `${file} is no backup but a copy of a database, and what the server wrote last may be missing from a copy. ` +
  'Name a file made by npm run backup.'

const damagedLine = (file: string, what: string): string =>
  `${file} is not a sound backup (${what}); take an older one.`

async function putInPlace(folder: string, file: string, options: RestoreOptions): Promise<Omit<Restored, 'mark'>> {
  const deleted = options.bringsBackDeleted ? [] : await tombstonesIn(databaseFile(folder))
  const unfinished = `${restoredFile(folder)}.unfinished`
  discard(unfinished)
  let stillDeleted: number
  try {
    copyFileSync(file, unfinished, constants.COPYFILE_EXCL)
    stillDeleted = await makeReady(unfinished, deleted ?? [], options)
    flushFile(unfinished)
    renameSync(unfinished, restoredFile(folder))
  } finally {
    discard(unfinished)
  }
  const keptAside = setAside(folder, options.now)
  renameSync(restoredFile(folder), databaseFile(folder))
  flushFile(folder)
  return { keptAside, stillDeleted, knowsDeleted: deleted !== null }
}

interface Tombstone {
  readonly log: LogId
  readonly at: number
}

/** Null when the old database cannot be read. */
async function tombstonesIn(path: string): Promise<readonly Tombstone[] | null> {
  if (!existsSync(path)) return []
  try {
    return await withDatabase(
      path,
      { readOnly: true },
      database => database.prepare('SELECT log, at FROM tombstones').all() as unknown as Tombstone[],
    )
  } catch {
    return null
  }
}

/** The copy as it will be served: no mark, new eras, and deleted what was deleted since. */
const makeReady = (path: string, tombstones: readonly Tombstone[], { newEra, now }: RestoreOptions): Promise<number> =>
  withDatabase(path, { readOnly: false }, database => {
    migrate(database, now)
    const logs = new Set((database.prepare('SELECT log FROM logs').all() as { log: LogId }[]).map(({ log }) => log))
    inTransaction(database, () => {
      removeMark(database)
      const { bury } = createWrites(database, newEra)
      for (const { log, at } of tombstones) bury(log, at)
      const setEra = database.prepare('UPDATE logs SET era = ? WHERE log = ?')
      for (const log of logs) setEra.run(newEra(), log)
    })
    const damage = damageOf(database)
    if (damage !== null) throw new Error(`the copy of the backup is damaged (${damage})`)
    return tombstones.filter(({ log }) => logs.has(log)).length
  })

/** Into a folder of their own, under the names that belong together. */
function setAside(folder: string, now: number): string | null {
  const present = companions.map(companion => `${databaseFile(folder)}${companion}`).filter(path => existsSync(path))
  if (present.length === 0) return null
  const stem = join(folder, `before-restore-${timeInName(now)}`)
  let aside = stem
  for (let more = 2; existsSync(aside); more++) aside = `${stem}-${more}`
  mkdirSync(aside)
  for (const path of present) renameSync(path, join(aside, basename(path)))
  flushFile(dirname(aside))
  return aside
}
