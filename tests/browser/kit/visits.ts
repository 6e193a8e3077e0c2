import { readdirSync } from 'node:fs'
import { basename } from 'node:path'
import type { FullConfig, FullResult, Reporter, Suite, TestCase, TestResult } from '@playwright/test/reporter'
import { allRows } from './screen-states.ts'
import { visitName, visitType } from './visit-name.ts'

/** Rows of the list of screens and states at which no test has looked. */
export const unvisited = (visits: ReadonlySet<string>): readonly string[] =>
  allRows(visitName).filter(row => !visits.has(row))

/** True where every spec of the folder was run, none of its tests left out by name. */
export function isWholeRun(folder: readonly string[], run: ReadonlySet<string>, grep: FullConfig['grep']): boolean {
  const specs = folder.filter(name => name.endsWith('.spec.ts') && !name.endsWith('.timing.spec.ts'))
  return String(grep) === '/.*/' && specs.every(name => run.has(name))
}

/** Turns a whole run red in which a state of a screen was not looked at by day and by night. */
// biome-ignore lint/style/noDefaultExport: the runner takes a reporter from there.
export default class VisitsReporter implements Reporter {
  #isWhole = false
  readonly #visits = new Set<string>()

  onBegin(config: FullConfig, suite: Suite): void {
    const run = new Set(suite.allTests().map(({ location }) => basename(location.file)))
    this.#isWhole = isWholeRun(readdirSync(new URL('..', import.meta.url)), run, config.grep)
  }

  onTestEnd(_: TestCase, { annotations }: TestResult): void {
    for (const { type, description } of annotations) if (type === visitType) this.#visits.add(description ?? '')
  }

  async onEnd(): Promise<{ status: FullResult['status'] } | undefined> {
    if (!this.#isWhole) return undefined
    const missing = unvisited(this.#visits)
    const rows = allRows(visitName).length
    console.log(`${rows - missing.length} of ${rows} states of the screens ${visitType}`)
    if (missing.length === 0) return undefined
    console.log(`not looked at:\n${missing.map(row => `  ${row}`).join('\n')}`)
    return { status: 'failed' }
  }
}
