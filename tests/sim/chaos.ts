import type { Faults } from './ledger.ts'
import { type RunResult, runSeed } from './run.ts'

/** What many seeds came to; `faults` counts the trouble made, by kind. */
export interface Chaos extends Omit<Faults, 'words'> {
  readonly firstSeed: number
  readonly lastSeed: number
  readonly seeds: number
  readonly ops: number
  readonly acknowledged: number
  readonly faults: Readonly<Record<string, number>>
}

const counted = ['ops', 'acknowledged', 'lost', 'duplicated', 'diverged', 'falseMarks', 'outOfRights'] as const

/** @param bad hears of each seed in which something went wrong. */
export async function runChaos(firstSeed: number, seeds: number, bad: (run: RunResult) => void): Promise<Chaos> {
  const sums = { ops: 0, acknowledged: 0, lost: 0, duplicated: 0, diverged: 0, falseMarks: 0, outOfRights: 0 }
  const faults: Record<string, number> = {}
  for (let seed = firstSeed; seed < firstSeed + seeds; seed++) {
    const run = await runSeed(seed)
    for (const name of counted) sums[name] += run[name]
    for (const [kind, count] of run.kinds) faults[kind] = (faults[kind] ?? 0) + count
    if (isBad(run)) bad(run)
  }
  return { firstSeed, lastSeed: firstSeed + seeds - 1, seeds, ...sums, faults }
}

export const isBad = (run: Omit<Faults, 'words'>): boolean =>
  run.lost + run.duplicated + run.diverged + run.falseMarks + run.outOfRights > 0
