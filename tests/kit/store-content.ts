import { createHash } from 'node:crypto'
import { join } from 'node:path'
import { loadDriver } from '#server/store/driver.ts'

export interface StoreContent {
  /** A hash of everything that the data folder holds, but for these tables, read past the server. */
  hash(...but: readonly string[]): string
  close(): void
}

export async function openStoreContent(folder: string): Promise<StoreContent> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(folder, 'six-threes.db'))
  const tables = database.prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all()
  const rows = tables.map(({ name }) => [String(name), database.prepare(`SELECT * FROM "${name}"`)] as const)
  return {
    hash(...but) {
      const hash = createHash('sha256')
      for (const [name, table] of rows) if (!but.includes(name)) hash.update(JSON.stringify(table.all()))
      return hash.digest('hex')
    },
    close: () => database.close(),
  }
}
