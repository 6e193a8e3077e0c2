import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished, vi } from 'vitest'
import { StartFault } from '#server/start-fault.ts'
import { loadDriver } from '#server/store/driver.ts'
import { createSqliteStore, openSqliteStore, type SqliteOptions } from '#server/store/sqlite.ts'
import type { Store } from '#server/store/store.ts'
import { logA, logB, makeEntry } from '#tests/server/support/entry.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { type StoreSetup, storeContract } from './contract.ts'

let eras = 0

const openIn = async (folder: string, changes: Partial<SqliteOptions> = {}): Promise<Store> => {
  const newEra = () => `era${String(++eras).padStart(8, '0')}`
  const options = { folder, now: () => 1_000, newEra, warn: () => {}, failed: () => {}, ...changes }
  const store = await openSqliteStore(options)
  onTestFinished(() => store.close())
  return store
}

const openDatabase = async (folder: string) => {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(folder, 'six-threes.db'))
  onTestFinished(() => database.close())
  return database
}

async function setUp(): Promise<StoreSetup> {
  const folder = makeFolder()
  const store = await openIn(folder)
  return {
    store,
    async reopen() {
      await store.close()
      return openIn(folder)
    },
  }
}

storeContract('sqlite', setUp)

describe('sqlite: the data folder', () => {
  it('is one store at a time, and free again when that one has ended', async () => {
    const folder = makeFolder()
    const store = await openIn(folder)
    await expect(openIn(folder)).rejects.toThrow(/^Another server \(process \d+\) uses the data folder/)
    expect(await store.append(makeEntry(1, { creates: true }))).toMatchObject({ kind: 'stored' })
    await store.close()
    await expect(openIn(folder)).resolves.toBeDefined()
  })

  it('cannot be a path through a file', async () => {
    const file = join(makeFolder(), 'file')
    writeFileSync(file, '')
    await expect(openIn(join(file, 'data'))).rejects.toThrow(/cannot be written \(ENOTDIR\)/)
  })

  it('of a newer version is refused, and nothing in it changes', async () => {
    const folder = makeFolder()
    await (await openIn(folder)).close()
    const database = await openDatabase(folder)
    database.exec('INSERT INTO schema (version, at) VALUES (99, 1); CREATE TABLE later (a)')
    await expect(openIn(folder)).rejects.toThrow(/newer version .* \(schema 99,/)
    await expect(openIn(folder)).rejects.toBeInstanceOf(StartFault)
    expect(database.prepare("SELECT name FROM sqlite_master WHERE name = 'later'").all()).toHaveLength(1)
  })

  it('with a file that is no database is refused in one line', async () => {
    const folder = makeFolder()
    writeFileSync(join(folder, 'six-threes.db'), 'not a database'.repeat(100))
    await expect(openIn(folder)).rejects.toThrow(
      /^The database .* is damaged \(file is not a database\)\. Nothing was changed\. /,
    )
  })
})

describe('sqlite: deleting', () => {
  it('leaves nothing of a log in any file of the folder', async () => {
    const folder = makeFolder()
    const store = await openIn(folder)
    const texts = Array.from({ length: 300 }, (_, index) => `Hornbeam ${index} `.repeat(20))
    for (const [index, text] of texts.entries()) {
      await store.append(makeEntry(index + 1, { creates: index === 0, text }))
      await store.append(makeEntry(index + 1, { log: logB, creates: index === 0, text: 'Larch' }))
    }
    const filesWith = (name: string) =>
      readdirSync(folder).filter(file => readFileSync(join(folder, file), 'latin1').includes(name))
    expect(filesWith('Hornbeam')).not.toEqual([])
    await store.bury(logA, 1)
    expect(filesWith('Hornbeam')).toEqual([])
    expect(filesWith('Larch')).not.toEqual([])
  })
})

describe('sqlite: trouble', () => {
  it('of a database that another holds is an answer, soon, and passes by itself', async () => {
    const folder = makeFolder()
    const failed = vi.fn()
    const store = await openIn(folder, { failed })
    await store.append(makeEntry(1, { creates: true }))
    const other = await openDatabase(folder)
    other.exec('BEGIN IMMEDIATE')
    const startedAt = performance.now()
    const waiting = await Promise.all([2, 3, 4].map(n => store.append(makeEntry(n))))
    expect(performance.now() - startedAt).toBeLessThan(1_000)
    expect(waiting).toEqual([2, 3, 4].map(() => ({ kind: 'later', reason: 'database' })))
    expect(await store.trouble()).toBe('database')
    expect(failed).toHaveBeenCalledOnce()
    other.exec('ROLLBACK')
    expect(await store.append(makeEntry(2))).toEqual({ kind: 'stored', seq: 2 })
    expect(await store.trouble()).toBeNull()
  })

  it('of a full disk is an answer too: what is stored is read, and it goes on once there is room', async () => {
    const folder = makeFolder()
    const { DatabaseSync } = await loadDriver()
    const path = join(folder, 'six-threes.db')
    await (await openIn(folder)).close()
    const database = new DatabaseSync(path)
    database.exec('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL')
    const failures: unknown[] = []
    const newEra = () => 'era00000001'
    const store = createSqliteStore(database, () => {}, { newEra, failed: error => failures.push(error) })
    onTestFinished(() => store.close())
    await store.append(makeEntry(1, { creates: true }))
    const { page_count: pages } = database.prepare('PRAGMA page_count').get() as { page_count: number }
    // SQLite then answers as on a disk without room for another page.
    database.exec(`PRAGMA max_page_count = ${pages + 2}`)
    const large = (n: number) => makeEntry(n, { text: `${n}`.repeat(5_000) })
    const outcomes = await Promise.all([2, 3, 4, 5].map(n => store.append(large(n))))
    expect(outcomes).toEqual(Array(4).fill({ kind: 'later', reason: 'disk' }))
    expect(failures).toEqual([expect.objectContaining({ errcode: 13 })])
    expect(await store.trouble()).toBe('disk')
    expect(await store.find(logA, makeEntry(1).device, 1)).toEqual({ seq: 1, text: 'text 1' })
    database.exec('PRAGMA max_page_count = 1000000')
    expect(await Promise.all([2, 3, 4, 5].map(n => store.append(large(n))))).toEqual(
      [2, 3, 4, 5].map(seq => ({ kind: 'stored', seq })),
    )
    expect(await store.trouble()).toBeNull()
    expect(database.prepare('PRAGMA integrity_check').get()).toEqual({ integrity_check: 'ok' })
  })

  it('with one op that can never be stored does not hold up the others', async () => {
    const store = await openIn(makeFolder())
    await store.append(makeEntry(1, { creates: true }))
    const broken = makeEntry(2, { text: { not: 'a text' } as unknown as string })
    const outcomes = await Promise.all([broken, makeEntry(3), makeEntry(4)].map(entry => store.append(entry)))
    expect(outcomes).toEqual([
      { kind: 'later', reason: 'database' },
      { kind: 'stored', seq: 2 },
      { kind: 'stored', seq: 3 },
    ])
    expect(await store.headOf(logA)).toMatchObject({ seq: 3 })
  })
})
