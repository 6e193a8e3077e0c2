import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import type { Outcome } from './fault.ts'
import { root } from './kit/server.ts'

/** Where the browser is at fault, or what is between it and the server: the tests of the suite, so often each. */
const specs = ['killed.timing', 'storage-faults', 'two-pages', 'network-faults']

interface Suite {
  readonly suites?: readonly Suite[]
  readonly specs?: readonly {
    readonly title: string
    readonly tests: readonly { readonly results: readonly Result[] }[]
  }[]
}

interface Result {
  readonly status: string
  readonly errors: readonly { readonly message?: string }[]
}

export async function browserFaults(rounds: number): Promise<readonly Outcome[]> {
  const report = join(root, '.cache', 'faults-browser.json')
  rmSync(report, { force: true })
  const cli = join(root, 'node_modules', '@playwright', 'test', 'cli.js')
  const args = ['test', '--config', 'tests/playwright.config.ts', '--workers=1', `--repeat-each=${rounds}`, ...specs]
  const child = spawn(process.execPath, [cli, ...args], {
    cwd: root,
    env: { ...process.env, PLAYWRIGHT_JSON: report },
    stdio: ['ignore', 'ignore', 'inherit'],
  })
  await once(child, 'close')
  return outcomesIn(JSON.parse(readFileSync(report, 'utf8')) as Suite)
}

/** What a browser's test finds wrong stands in its words: it looks at what people read, and does not count acts. */
function outcomesIn(suite: Suite): readonly Outcome[] {
  const results = new Map<string, Result[]>()
  for (const { title, tests } of specsIn(suite)) {
    results.set(title, [...(results.get(title) ?? []), ...tests.flatMap(test => test.results)])
  }
  return [...results].map(([fault, all]) => {
    const words = all.flatMap(({ status, errors }) => (status === 'passed' ? [] : [errors[0]?.message ?? status]))
    return { fault, rounds: all.length, acknowledged: 0, lost: 0, duplicated: 0, falseMarks: 0, notes: {}, words }
  })
}

const specsIn = ({ suites = [], specs: own = [] }: Suite): NonNullable<Suite['specs']> => [
  ...own,
  ...suites.flatMap(specsIn),
]
