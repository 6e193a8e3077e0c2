import { execFile } from 'node:child_process'
import { createHash } from 'node:crypto'
import { closeSync, copyFileSync, openSync, readdirSync, readFileSync, rmSync, statSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { type Outcome, runFault } from './fault.ts'
import type { History } from './kit/history.ts'
import { type Ended, makeFolder, root } from './kit/server.ts'
import { compareEnd, compareNow, setStage, underLoad, whenSettled } from './kit/stage.ts'
import { pause, until } from './kit/waiting.ts'

const database = 'six-threes.db'

/** Bytes of the database are other than they were written: the server says so in a sentence and leaves the files alone. */
export const damagedPage = (rounds: number): Promise<Outcome> =>
  runFault('a damaged page of the database', rounds, async (ends, notes) => {
    const stage = await setStage(ends, { phones: 4 })
    const { server, phones, history } = stage
    for (let round = 0; round < rounds; round++) {
      await underLoad(phones, () => pause(600))
      await whenSettled(phones)
      // Killed, it leaves SQLite's log beside the database; told to end, it does not.
      await server.end(round % 2 === 0 ? 'SIGTERM' : 'SIGKILL')
      const sound = makeFolder(ends)
      for (const name of filesIn(server.folder)) copyFileSync(join(server.folder, name), join(sound, name))
      overwritePages(join(server.folder, database))
      const before = hashesIn(server.folder)
      const ended = await server.startInVain()
      notes.sentence = ended.err.trim().replaceAll(server.folder, 'DATA_DIR')
      expectSentence(history, ended, /^The database .* is damaged \(.*\)\. Nothing was changed\. .*restore -- FILE/)
      if (hashesIn(server.folder) !== before)
        history.fail('other', 'the server changed the files of a damaged database')
      for (const name of filesIn(server.folder)) rmSync(join(server.folder, name))
      for (const name of filesIn(sound)) copyFileSync(join(sound, name), join(server.folder, name))
      await server.start()
      await compareNow(stage)
    }
    await compareEnd(stage)
    return history
  })

/** A second server on the folder of one that runs ends with a sentence; the first goes on under its load. */
export const secondServer = (rounds: number): Promise<Outcome> =>
  runFault('a second server on the same data', rounds, async (ends, notes) => {
    const stage = await setStage(ends, { phones: 4 })
    const { server, phones, history } = stage
    await underLoad(phones, async () => {
      for (let round = 0; round < rounds; round++) {
        const ended = await server.startInVain()
        notes.sentence = ended.err
          .trim()
          .replaceAll(server.folder, 'DATA_DIR')
          .replace(/process \d+/, 'process N')
        expectSentence(
          history,
          ended,
          new RegExp(`^Another server \\(process ${server.pid()}\\) uses the data folder .*\\.$`),
        )
        const before = history.acknowledged()
        await until('the first goes on', () => history.acknowledged() > before + 20)
      }
    })
    await compareEnd(stage)
    return history
  })

/**
 * A copied file is refused. A backup made under load comes back with a new era, and the phones fill in what was stored
 * after it.
 */
export const copiedFile = (rounds: number): Promise<Outcome> =>
  runFault('a copied file in the place of a backup', rounds, async (ends, notes) => {
    const stage = await setStage(ends, { phones: 5 })
    const { server, phones, history } = stage
    const eras = new Set([eraOf(phones)])
    for (let round = 0; round < rounds; round++) {
      const kept = join(makeFolder(ends), 'kept.db')
      const copy = join(makeFolder(ends), 'copy.db')
      await underLoad(phones, async () => {
        await pause(300)
        copyFileSync(join(server.folder, database), copy)
        expectDone(history, await run('backup', server.folder, kept))
        const before = history.acknowledged()
        await until('more is stored than the backup has', () => history.acknowledged() > before + 40)
        await server.end('SIGTERM')
      })
      expectSentence(
        history,
        await run('restore', server.folder, copy),
        /^restore: .* is no backup but a copy of a database/,
      )
      expectDone(history, await run('restore', server.folder, kept))
      await server.start()
      for (const { engine } of phones) engine.wake()
      await whenSettled(phones)
      await until('every phone knows the new era', () => phones.every(({ engine }) => !eras.has(eraOf([{ engine }]))))
      eras.add(eraOf(phones))
      await compareNow(stage)
    }
    notes.eras = eras.size
    if (eras.size !== rounds + 1) history.fail('other', `${eras.size} eras after ${rounds} restores`)
    await compareEnd(stage)
    return history
  })

type Held = { readonly engine: { holding: () => { readonly record: { readonly era: string | null } } } }
const eraOf = ([phone]: readonly Held[]): string => phone?.engine.holding().record.era ?? ''

/** Noise over every page but the first, as a disk that has gone bad gives it. */
function overwritePages(path: string): void {
  const file = openSync(path, 'r+')
  for (let at = 4_096; at < statSync(path).size; at += 4_096) writeSync(file, Buffer.alloc(512, 0xa5), 0, 512, at)
  closeSync(file)
}

/** The database and what SQLite keeps beside it; the index of its log is made anew by whoever opens it. */
const filesIn = (folder: string): string[] =>
  readdirSync(folder).filter(name => name.startsWith(database) && !name.endsWith('-shm'))

function hashesIn(folder: string): string {
  const hashed = filesIn(folder).map(
    name =>
      `${name} ${createHash('sha256')
        .update(readFileSync(join(folder, name)))
        .digest('hex')}`,
  )
  return hashed.sort().join('\n')
}

function expectSentence(history: History, { status, err }: Ended, line: RegExp): void {
  const isOneLine = err.trim().split('\n').length === 1
  if (status === 1 && isOneLine && line.test(err.trim())) return
  history.fail('other', `ended with ${status} and ${JSON.stringify(err)}`)
}

function expectDone(history: History, { status, err }: Ended): void {
  if (status !== 0) history.fail('other', `the command ended with ${status}: ${err}`)
}

/** `npm run backup` or `restore`, as it is run. */
const run = (command: 'backup' | 'restore', DATA_DIR: string, file: string): Promise<Ended> =>
  new Promise(resolve => {
    const options = { cwd: root, env: { PATH: process.env.PATH, HOME: process.env.HOME, DATA_DIR } }
    execFile(process.execPath, ['scripts/run.mjs', command, file], options, (error, _out, err) =>
      resolve({ status: error === null ? 0 : Number(error.code), err }),
    )
  })
