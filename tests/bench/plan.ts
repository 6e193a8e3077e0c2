import { execFileSync } from 'node:child_process'
import { importAsBuilt } from '#tests/kit/as-built.ts'
import type { BenchResult } from './figures.ts'

const built = new URL('../../.cache/as-built/plan-run.js', import.meta.url).href
const processes = 7

/** Eighteen holes planned, and the first answer for a ball in hand, beside a fixed loop of arithmetic. */
export async function benchPlan(): Promise<BenchResult> {
  const { runPlan } = await importAsBuilt<typeof import('./plan-run.ts')>('bench/plan-run.ts')
  const script = `import { firstAnswer } from ${JSON.stringify(built)}; console.log(JSON.stringify(firstAnswer()))`
  const firsts = Array.from({ length: processes }, () =>
    JSON.parse(execFileSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' })),
  )
  return runPlan(firsts)
}
