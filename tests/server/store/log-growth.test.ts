import { statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { makeEntry } from '#tests/server/support/entry.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { openDatabase, openStore } from '#tests/server/support/store.ts'

const mostBytes = 64 * 1024 * 1024

it('SQLite’s own log, grown while somebody reads, is cut back once nobody does', async () => {
  const folder = makeFolder()
  const store = await openStore(folder)
  await store.append(makeEntry(1, { creates: true }))
  const logBytes = () => statSync(join(folder, 'six-threes.db-wal')).size
  const reader = await openDatabase(join(folder, 'six-threes.db'))
  reader.exec('BEGIN')
  reader.prepare('SELECT count(*) FROM sqlite_master').get()
  const text = 'x'.repeat(16_000)
  let n = 1
  while (logBytes() <= mostBytes) {
    const entries = Array.from({ length: 500 }, () => makeEntry(++n, { text }))
    await Promise.all(entries.map(entry => store.append(entry)))
  }
  reader.exec('ROLLBACK')
  // One commit folds the log into the database, the next begins it anew.
  for (let turn = 0; turn < 3; turn++) await store.append(makeEntry(++n))
  expect(logBytes()).toBeLessThanOrEqual(mostBytes)
  expect(await store.append(makeEntry(++n))).toEqual({ kind: 'stored', seq: n })
})
