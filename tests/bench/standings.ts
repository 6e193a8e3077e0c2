import { importAsBuilt } from '#tests/kit/as-built.ts'
import type { BenchResult } from './figures.ts'

/** Standings of 144 players from parsed ops, beside one SQL query over the same facts; and one more score. */
export async function benchStandings(): Promise<BenchResult> {
  const { runStandings } = await importAsBuilt<typeof import('./standings-run.ts')>('bench/standings-run.ts')
  return runStandings()
}
