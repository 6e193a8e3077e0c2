import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import type { Page } from '@playwright/test'
import { build, type Rollup } from 'vite'
import { tapScore, whenOnServer } from '#tests/browser/kit/golfer.ts'
import { type BenchResult, rounded } from './figures.ts'
import { openPhonePage } from './phone-page.ts'

const budget = { gzippedBytes: 1.4 }
const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))
const built = path('../../dist/client')

/**
 * The JavaScript without which a phone cannot score a hole, gzipped: the script of the page with all that it imports, the
 * client of the network included. That nothing else is needed is shown in the same run: the page is opened anew on a hole
 * with every other script refused, and a score is put in, kept, shown and sent. Beside it the libraries alone, built the
 * same way.
 */
export async function benchScript(): Promise<BenchResult> {
  const first = firstPiece()
  await scoreWith(first)
  const [ours, yardstick] = [bytesOf(first), await bytesOfLibraries()]
  return {
    name: 'script',
    ours: { gzippedBytes: ours },
    yardstick: { gzippedBytes: yardstick },
    ratio: { gzippedBytes: rounded(ours / yardstick) },
    budget,
    holds: ours <= yardstick * budget.gzippedBytes,
  }
}

/** Names of the script that the page opens with and of whatever that imports before it runs. */
function firstPiece(): ReadonlySet<string> {
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

async function scoreWith(scripts: ReadonlySet<string>): Promise<void> {
  const { page, close } = await openPhonePage({ hasWorker: false })
  await page.route('**/*.js', route => (scripts.has(nameOf(route.request().url())) ? route.continue() : route.abort()))
  await page.reload()
  await tapScore(page, 'Alder', 5)
  await whenOnServer(page)
  const run = await scriptsRun(page)
  await close()
  if (run.length !== scripts.size) throw new Error(`the page ran ${run.join(', ')}`)
}

const nameOf = (url: string): string => basename(new URL(url).pathname)

/** Names of the scripts that came. */
const scriptsRun = async (page: Page): Promise<readonly string[]> => {
  const came =
    'performance.getEntriesByType("resource").filter(each => each.responseStatus === 200).map(each => each.name)'
  const urls = await page.evaluate<string[]>(came)
  return [...new Set(urls.map(nameOf))].filter(name => name.endsWith('.js'))
}

const gzippedBytes = (code: string): number => gzipSync(code).length

const bytesOf = (scripts: Iterable<string>): number =>
  [...scripts].reduce((sum, name) => sum + gzippedBytes(readFileSync(`${built}/assets/${name}`, 'utf8')), 0)

async function bytesOfLibraries(): Promise<number> {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      rollupOptions: { input: path('script-libraries.ts'), preserveEntrySignatures: 'strict' },
    },
  })
  const outputs = [built].flat().filter((each): each is Rollup.RollupOutput => 'output' in each)
  return outputs
    .flatMap(({ output }) => output)
    .reduce((sum, file) => sum + (file.type === 'chunk' ? gzippedBytes(file.code) : 0), 0)
}
