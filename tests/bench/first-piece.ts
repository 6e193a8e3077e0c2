import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

const built = fileURLToPath(new URL('../../dist/client', import.meta.url))

/** Names of the script that the page opens with and of whatever that imports before it runs. */
export function firstPiece(): ReadonlySet<string> {
  const page = readFileSync(`${built}/index.html`, 'utf8')
  const found = new Set([...page.matchAll(/src="\/assets\/([^"]+\.js)"/g)].flatMap(([, name]) => name ?? []))
  for (const name of found) {
    const imports = readFileSync(`${built}/assets/${name}`, 'utf8').matchAll(
      /(?:import|from)\s*["'`]\.\/([^"'`]+\.js)/g,
    )
    for (const [, other] of imports) if (other !== undefined) found.add(other)
  }
  return found
}

export const gzippedBytes = (code: string): number => gzipSync(code).length

/** Gzipped bytes of built scripts, by their names. */
export const bytesOfScripts = (scripts: Iterable<string>): number =>
  [...scripts].reduce((sum, name) => sum + gzippedBytes(readFileSync(`${built}/assets/${name}`, 'utf8')), 0)
