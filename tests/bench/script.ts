import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { build, type Rollup } from 'vite'
import { tapScore, whenOnServer } from '#tests/browser/kit/golfer.ts'
import { type BenchResult, rounded } from './figures.ts'
import { bytesOfScripts, firstPiece, gzippedBytes } from './first-piece.ts'
import { openPhonePage } from './phone-page.ts'

const budget = { gzippedBytes: 1.4 }
const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))

/**
 * The JavaScript without which a phone cannot score a hole, gzipped: the script of the page with all that it imports, the
 * client of the network included. That nothing else is needed is shown in the same run: the page is opened anew on a hole
 * with every other script refused, and a score is put in, kept, shown and sent. Beside it the libraries alone, built the
 * same way.
 */
export async function benchScript(): Promise<BenchResult> {
  const first = firstPiece()
  await scoreWith(first)
  const [ours, yardstick] = [bytesOfScripts(first), await bytesOfLibraries()]
  return {
    name: 'script',
    ours: { gzippedBytes: ours },
    yardstick: { gzippedBytes: yardstick },
    ratio: { gzippedBytes: rounded(ours / yardstick) },
    budget,
    holds: ours <= yardstick * budget.gzippedBytes,
  }
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
