import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseSettings } from '#server/settings.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** The folder that the server uses with these settings; a name that is not absolute counts from the product's folder. */
export function dataFolderNamed(command: string): string {
  const settings = parseSettings(process.env)
  if (!settings.ok) fail(`${command}: ${settings.error}`, 1)
  return resolve(join(root, '.'), settings.value.dataFolder)
}

/** Status 1: it did not work; 2: it was asked for wrongly. */
export function fail(line: string, status: 1 | 2): never {
  process.stderr.write(`${line}\n`)
  process.exit(status)
}

export const sizeOf = (bytes: number): string =>
  bytes < 1_000_000 ? `${Math.ceil(bytes / 1_000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`
