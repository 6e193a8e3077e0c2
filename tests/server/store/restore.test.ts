import { copyFileSync, existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { makeBackup } from '#server/store/backup.ts'
import { type RestoreOptions, restoreBackup } from '#server/store/restore.ts'
import type { Store } from '#server/store/store.ts'
import { logA, logB, makeEntry } from '#tests/server/support/entry.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { breakPages, openDatabase, openStore } from '#tests/server/support/store.ts'

let eras = 0
const restore = (folder: string, file: string, changes: Partial<RestoreOptions> = {}) =>
  restoreBackup({
    folder,
    file,
    bringsBackDeleted: false,
    now: Date.UTC(2026, 10, 28, 9, 30),
    newEra: () => `restored${String(++eras).padStart(4, '0')}`,
    ...changes,
  })

const append = async (store: Store, log: typeof logA, from: number, to: number) => {
  for (let n = from; n <= to; n++) await store.append(makeEntry(n, { log, creates: n === 1, text: `${log} ${n}` }))
}

/** Two logs of five acts in a backup, then three acts more in the store, which is closed. */
async function setUp() {
  const folder = makeFolder()
  const store = await openStore(folder)
  await append(store, logA, 1, 5)
  await append(store, logB, 1, 5)
  const file = join(makeFolder(), 'kept.db')
  const made = await makeBackup({ folder, target: file, now: 1_000 })
  if (!made.ok) throw new Error(made.error)
  await append(store, logA, 6, 8)
  return { folder, file, store }
}

const eraOf = async (store: Store, log = logA) => ((await store.headOf(log)) as { era: string }).era

describe('a restore', () => {
  it('puts the backup in place, with a new era for every log and room for what the phones send', async () => {
    const { folder, file, store } = await setUp()
    const before = [await eraOf(store), await eraOf(store, logB)]
    await store.close()
    const restored = await restore(folder, file)
    expect(restored).toMatchObject({
      ok: true,
      value: { mark: { logs: 2, ops: 10 }, stillDeleted: 0, knowsDeleted: true },
    })
    const again = await openStore(folder)
    const after = [await eraOf(again), await eraOf(again, logB)]
    expect(new Set([...before, ...after]).size).toBe(4)
    expect(await again.headOf(logA)).toMatchObject({ seq: 5 })
    expect(await again.append(makeEntry(8, { text: `${logA} 8` }))).toEqual({ kind: 'stored', seq: 6 })
    expect(await again.append(makeEntry(5, { text: `${logA} 5` }))).toEqual({ kind: 'already stored', seq: 5 })
  })

  it('keeps the old database aside, log and all, and the backup as it is', async () => {
    const { folder, file, store } = await setUp()
    const bytes = readFileSync(file)
    await store.close()
    const restored = await restore(folder, file)
    if (!restored.ok) throw new Error(restored.error)
    const aside = restored.value.keptAside ?? ''
    expect(aside).toBe(join(folder, 'before-restore-2026-11-28T093000Z'))
    const old = await openDatabase(join(aside, 'six-threes.db'))
    expect(old.prepare('SELECT seq FROM logs WHERE log = ?').get(logA)).toEqual({ seq: 8 })
    expect(readFileSync(file).equals(bytes)).toBe(true)
    expect(await restore(folder, file)).toMatchObject({ value: { keptAside: `${aside}-2` } })
  })

  it('into an empty folder needs no old database', async () => {
    const { file } = await setUp()
    const folder = makeFolder()
    expect(await restore(folder, file)).toMatchObject({ value: { keptAside: null } })
    expect(await (await openStore(folder)).headOf(logB)).toMatchObject({ seq: 5 })
  })

  it('leaves what was deleted since deleted, unless asked', async () => {
    const { folder, file, store } = await setUp()
    await store.bury(logB, 2_000)
    await store.close()
    expect(await restore(folder, file)).toMatchObject({ value: { stillDeleted: 1 } })
    const again = await openStore(folder)
    expect(await again.headOf(logB)).toBe('deleted')
    await again.close()
    expect(await restore(folder, file, { bringsBackDeleted: true })).toMatchObject({ value: { stillDeleted: 0 } })
    expect(await (await openStore(folder)).headOf(logB)).toMatchObject({ seq: 5 })
  })

  it('in the place of a damaged database says that it cannot know what had been deleted', async () => {
    const { folder, file, store } = await setUp()
    await store.close()
    breakPages(join(folder, 'six-threes.db'))
    await expect(openStore(folder)).rejects.toThrow(/is damaged .*restore -- FILE/)
    expect(await restore(folder, file)).toMatchObject({ value: { knowsDeleted: false } })
    expect(await (await openStore(folder)).headOf(logA)).toMatchObject({ seq: 5 })
  })

  it('that was cut short is not served, and done by the next', async () => {
    const { folder, file, store } = await setUp()
    await store.close()
    copyFileSync(file, join(folder, 'restored.db'))
    await expect(openStore(folder)).rejects.toThrow(/A restore into .* was cut short; run npm run restore/)
    expect(await restore(folder, file)).toMatchObject({ ok: true })
    await expect(openStore(folder)).resolves.toBeDefined()
  })
})

describe('a restore refuses, and changes nothing,', () => {
  const refusal = async (file: string, line: RegExp) => {
    const folder = makeFolder()
    await (await openStore(folder)).close()
    const before = readFileSync(join(folder, 'six-threes.db'))
    expect(await restore(folder, file)).toEqual({ ok: false, error: expect.stringMatching(line) })
    expect(readFileSync(join(folder, 'six-threes.db')).equals(before)).toBe(true)
    expect(readdirSync(folder).filter(name => /restore/.test(name))).toEqual([])
  }

  it('a copied database file, which lacks what was written last', async () => {
    const { folder } = await setUp()
    const copy = join(makeFolder(), 'copy.db')
    copyFileSync(join(folder, 'six-threes.db'), copy)
    await refusal(copy, /is no backup but a copy of a database, .*npm run backup\. Nothing was changed\.$/)
    const database = await openDatabase(join(folder, 'six-threes.db'))
    const other = join(makeFolder(), 'other.db')
    database.prepare('VACUUM INTO ?').run(other)
    await refusal(other, /is no backup but a copy of a database/)
    expect(existsSync(`${copy}-wal`)).toBe(false)
  })

  it('a database that was restored and then copied', async () => {
    const { file } = await setUp()
    const folder = makeFolder()
    await restore(folder, file)
    await refusal(join(folder, 'six-threes.db'), /is no backup but a copy/)
  })

  it('a backup that is cut, damaged or not whole', async () => {
    const { file } = await setUp()
    const copy = (name: string) => {
      const path = join(makeFolder(), name)
      copyFileSync(file, path)
      return path
    }
    const [cut, broken, lacking] = [copy('cut.db'), copy('broken.db'), copy('lacking.db')]
    truncateSync(cut, 8_192)
    breakPages(broken)
    const database = await openDatabase(lacking)
    database.exec('DELETE FROM ops WHERE seq = 3')
    database.close()
    for (const path of [cut, broken, lacking]) await refusal(path, /is not a sound backup \(.*\); take an older one\./)
  })

  it('a file that is none of ours, and one that is not there', async () => {
    const file = join(makeFolder(), 'notes.txt')
    writeFileSync(file, 'not a database'.repeat(100))
    await refusal(file, /is not a sound backup \(file is not a database\)/)
    await refusal(join(makeFolder(), 'gone.db'), /is not there; name a backup made by npm run backup\.$/)
  })

  it('a backup of a newer version', async () => {
    const { file } = await setUp()
    const database = await openDatabase(file)
    database.exec('UPDATE backup SET schema = 99')
    database.close()
    await refusal(file, /was made by a newer version of Six Threes/)
  })

  it('while a server holds the folder', async () => {
    const { folder, file, store } = await setUp()
    expect(await restore(folder, file)).toEqual({
      ok: false,
      error: expect.stringMatching(
        /^Another server \(process \d+\) uses .* Stop it, then restore\. Nothing was changed\.$/,
      ),
    })
    expect(await store.append(makeEntry(9, { text: 'nine' }))).toEqual({ kind: 'stored', seq: 9 })
  })

  it('and names the setting where the folder cannot be written', async () => {
    const { file } = await setUp()
    expect(await restore(join(file, 'data'), file)).toMatchObject({
      error: expect.stringMatching(/set DATA_DIR to one/),
    })
  })
})
