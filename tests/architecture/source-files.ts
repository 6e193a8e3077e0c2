import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../../', import.meta.url))

export interface SourceFile {
  /** From the root. */
  readonly path: string
  readonly text: string
}

export function filesUnder(folder: string): SourceFile[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && /\.(ts|tsx|mjs)$/.test(entry.name))
    .map(entry => join(entry.parentPath, entry.name))
    .filter(path => !path.includes('/fixtures/'))
    .map(path => ({ path: relative(root, path), text: readFileSync(path, 'utf8') }))
}
