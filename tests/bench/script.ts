import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import type { Page } from '@playwright/test'
import { build, type Rollup } from 'vite'
import { tapScore, whenOnServer } from '#tests/browser/kit/golfer.ts'
import { type BenchResult, rounded } from './figures.ts'
import { openPhonePage } from './phone-page.ts'

const budget = { gzippedBytes: 1.4 }
const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))

/** The JavaScript that a phone loads to score a hole, gzipped; beside the libraries alone, built the same way. */
export async function benchScript(): Promise<BenchResult> {
  const [ours, yardstick] = [await bytesToScore(), await bytesOfLibraries()]
  const ratio = { gzippedBytes: rounded(ours / yardstick) }
  const holds = ours <= yardstick * budget.gzippedBytes
  return {
    name: 'script',
    ours: { gzippedBytes: ours },
    yardstick: { gzippedBytes: yardstick },
    ratio,
    budget,
    holds,
  }
}

const gzippedBytes = (code: string): number => gzipSync(code).length

/** The page is opened on the hole, a score is put in and sent; what the browser fetched for it is in the build. */
async function bytesToScore(): Promise<number> {
  const { page, close } = await openPhonePage()
  await page.reload()
  await tapScore(page, 'Alder', 5)
  await whenOnServer(page)
  const scripts = await scriptsOf(page)
  await close()
  return scripts.reduce((sum, file) => sum + gzippedBytes(readFileSync(path(`../../dist/client${file}`), 'utf8')), 0)
}

const scriptsOf = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [
    ...new Set(
      performance
        .getEntriesByType('resource')
        .map(({ name }) => new URL(name).pathname)
        .filter(name => name.endsWith('.js') && name.startsWith('/assets/')),
    ),
  ])

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
