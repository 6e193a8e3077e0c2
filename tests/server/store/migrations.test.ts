import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Database } from '#server/store/driver.ts'
import { migrate, schemaVersion, steps, versionOf } from '#server/store/migrations.ts'
import { logA, makeEntry } from '#tests/server/support/entry.ts'
import { makeFolder } from '#tests/server/support/folder.ts'
import { openDatabase, openStore } from '#tests/server/support/store.ts'

const shapeOf = (database: Database) =>
  database.prepare('SELECT type, name, sql FROM sqlite_schema ORDER BY type, name').all()

/** A row in every table that this version has, as its server would have left it. */
function fill(database: Database): void {
  for (const { name } of database.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").all() as {
    name: string
  }[]) {
    if (name === 'schema') continue
    const columns = database.prepare(`PRAGMA table_info(${name})`).all() as { type: string }[]
    const values = columns.map(({ type }) => (type === 'INTEGER' ? '1' : `'${logA}'`))
    database.exec(`INSERT INTO ${name} VALUES (${values.join(', ')})`)
  }
}

const contentOf = (database: Database) =>
  ['logs', 'ops', 'grants', 'voids', 'offered', 'tombstones'].map(table =>
    database.prepare(`SELECT * FROM ${table}`).all(),
  )

describe('the schema', () => {
  const earlier = Array.from({ length: schemaVersion }, (_, version) => version)

  it.each(earlier)('comes forward from version %i to the one that a new store has', async version => {
    const [old, fresh] = await Promise.all(['old.db', 'new.db'].map(name => openDatabase(join(makeFolder(), name))))
    migrate(old as Database, 1_000, steps.slice(0, version))
    migrate(old as Database, 2_000)
    migrate(fresh as Database, 2_000)
    expect(versionOf(old as Database)).toBe(schemaVersion)
    expect(shapeOf(old as Database)).toEqual(shapeOf(fresh as Database))
  })

  it('that is this version’s is left as it is, rows and all', async () => {
    const database = await openDatabase(join(makeFolder(), 'old.db'))
    migrate(database, 1_000)
    fill(database)
    const before = contentOf(database)
    expect(before.every(rows => rows.length === 1)).toBe(true)
    migrate(database, 2_000)
    expect(contentOf(database)).toEqual(before)
    expect(database.prepare('SELECT max(at) AS at FROM schema').get()).toEqual({ at: 1_000 })
  })

  it('goes a step on with what is stored, or stays where it was when the step fails', async () => {
    const database = await openDatabase(join(makeFolder(), 'old.db'))
    migrate(database, 1_000)
    fill(database)
    const next = 'ALTER TABLE logs ADD COLUMN later TEXT'
    expect(() => migrate(database, 2_000, [...steps, `${next}; SELECT * FROM nowhere`])).toThrow(/nowhere/)
    expect(versionOf(database)).toBe(schemaVersion)
    migrate(database, 3_000, [...steps, next])
    expect(versionOf(database)).toBe(schemaVersion + 1)
    expect(database.prepare('SELECT log, later FROM logs').all()).toEqual([{ log: logA, later: null }])
    expect(() => migrate(database, 4_000)).toThrow(/newer version .* Nothing was changed/)
    expect(database.prepare('SELECT count(*) AS ops FROM ops').get()).toEqual({ ops: 1 })
  })

  it('of every earlier version is opened by the store, and what was in it is served', async () => {
    for (let version = 1; version <= schemaVersion; version++) {
      const folder = makeFolder()
      const database = await openDatabase(join(folder, 'six-threes.db'))
      migrate(database, 1_000, steps.slice(0, version))
      database.exec(`INSERT INTO logs (log, era, seq, at) VALUES ('${logA}', 'era00000', 1, 1)`)
      database.exec(`INSERT INTO ops (log, seq, device, n, text, at) VALUES ('${logA}', 1, 'alder', 1, 'text 1', 1)`)
      database.close()
      const store = await openStore(folder)
      expect(await store.append(makeEntry(1))).toEqual({ kind: 'already stored', seq: 1 })
      expect(await store.append(makeEntry(2))).toEqual({ kind: 'stored', seq: 2 })
    }
  })
})
