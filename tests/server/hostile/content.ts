import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import { loadDriver } from '#server/store/driver.ts'

/** Gives a hash of everything that a data folder holds, read past the server. */
export async function openContent(folder: string): Promise<() => string> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(folder, 'six-threes.db'))
  onTestFinished(() => database.close())
  const tables = database.prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all()
  const rows = tables.map(({ name }) => database.prepare(`SELECT * FROM "${name}"`))
  return () => {
    const hash = createHash('sha256')
    for (const table of rows) hash.update(JSON.stringify(table.all()))
    return hash.digest('hex')
  }
}
