import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { makeBackup } from '#server/store/backup.ts'
import { readMark } from '#server/store/backup-mark.ts'
import { makeEntry } from '#tests/server/support/entry.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { breakPages, openDatabase, openStore } from '#tests/server/support/store.ts'

const now = Date.UTC(2026, 10, 28, 9, 30)
const backUp = (folder: string, target: string | null = null) => makeBackup({ folder, target, now })

describe('a backup', () => {
  it('holds what is committed while the store is open, and says of itself what it is', async () => {
    const folder = makeFolder()
    const store = await openStore(folder)
    await Promise.all([1, 2, 3].map(n => store.append(makeEntry(n, { creates: n === 1 }))))
    const made = await backUp(folder)
    if (!made.ok) throw new Error(made.error)
    expect(made.value.file).toBe(join(folder, 'backups', 'six-threes-2026-11-28T093000Z.db'))
    const database = await openDatabase(made.value.file)
    expect(readMark(database)).toEqual({ at: now, source: folder, schema: 1, logs: 1, ops: 3 })
    expect(database.prepare('SELECT text FROM ops ORDER BY seq').all()).toMatchObject(
      [1, 2, 3].map(n => ({ text: `text ${n}` })),
    )
    expect(await store.append(makeEntry(4))).toEqual({ kind: 'stored', seq: 4 })
  })

  it('is one file, complete in itself', async () => {
    const folder = makeFolder()
    await openStore(folder)
    const file = join(makeFolder(), 'deep', 'kept.db')
    expect(await backUp(folder, file)).toMatchObject({ ok: true, value: { file, bytes: statSync(file).size } })
    for (const rest of ['-wal', '-shm', '-journal', '.unfinished']) expect(existsSync(`${file}${rest}`)).toBe(false)
  })

  it('goes into a folder under a name with its time', async () => {
    const folder = makeFolder()
    await openStore(folder)
    const target = makeFolder()
    expect(await backUp(folder, target)).toMatchObject({
      value: { file: join(target, 'six-threes-2026-11-28T093000Z.db') },
    })
  })

  it('never takes the place of another file', async () => {
    const folder = makeFolder()
    await openStore(folder)
    const file = join(makeFolder(), 'kept.db')
    writeFileSync(file, 'mine')
    expect(await backUp(folder, file)).toEqual({
      ok: false,
      error: `${file} is there already; name a file that is not. Nothing was written.`,
    })
    expect(readFileSync(file, 'utf8')).toBe('mine')
  })

  it('notes for the server when the last one was made', async () => {
    const folder = makeFolder()
    await openStore(folder)
    const file = join(makeFolder(), 'kept.db')
    await backUp(folder, file)
    expect(JSON.parse(readFileSync(join(folder, 'last-backup.json'), 'utf8'))).toEqual({ at: now, file })
  })

  it('of a folder without a database says which setting names the folder', async () => {
    const folder = makeFolder()
    expect(await backUp(folder)).toMatchObject({
      ok: false,
      error: expect.stringMatching(/holds no database; set DATA_DIR/),
    })
    expect(existsSync(join(folder, 'backups'))).toBe(false)
  })

  it('of a damaged database is none, and the last good one is kept', async () => {
    const folder = makeFolder()
    const store = await openStore(folder)
    for (let n = 1; n <= 200; n++) await store.append(makeEntry(n, { creates: n === 1, text: `${n}`.repeat(200) }))
    await store.close()
    breakPages(join(folder, 'six-threes.db'))
    const file = join(makeFolder(), 'kept.db')
    expect(await backUp(folder, file)).toMatchObject({
      ok: false,
      error: expect.stringMatching(/is damaged .*restore -- FILE/),
    })
    expect(existsSync(file)).toBe(false)
  })

  it('where nothing can be written says so', async () => {
    const folder = makeFolder()
    await openStore(folder)
    const file = join(makeFolder(), 'file')
    writeFileSync(file, '')
    expect(await backUp(folder, join(file, 'kept.db'))).toMatchObject({
      ok: false,
      error: expect.stringMatching(/could not be written: .*\. Nothing of it was kept\.$/),
    })
  })
})
