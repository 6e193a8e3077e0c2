import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { loadDriver } from '#server/store/driver.ts'

export interface StoreContent {
  /** A hash of everything that the data folder holds, read past the server. */
  hash(): string
  close(): void
}

export async function openStoreContent(folder: string): Promise<StoreContent> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(folder, 'six-threes.db'))
  const tables = database.prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all()
  const rows = tables.map(({ name }) => database.prepare(`SELECT * FROM "${name}"`))
  return {
    hash() {
      const hash = createHash('sha256')
      for (const table of rows) hash.update(JSON.stringify(table.all()))
      return hash.digest('hex')
    },
    close: () => database.close(),
  }
}
