import { afterEach, describe, expect, it, vi } from 'vitest'
import type { LogState } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import { isBad } from './chaos.ts'
import type { RunResult } from './run.ts'
import type { Sabotage } from './sabotage.ts'

const seedsAtMost = 60

type RunSeed = (seed: number, sabotage?: Sabotage) => Promise<RunResult>

/** The first run that finds the fault planted; null when none does. */
async function firstBad(runSeed: RunSeed, sabotage: Sabotage = 'none'): Promise<RunResult | null> {
  for (let seed = 1; seed <= seedsAtMost; seed++) {
    const run = await runSeed(seed, sabotage)
    if (isBad(run)) return run
  }
  return null
}

type Fold = (state: LogState, ops: Iterable<Op>) => LogState

/** The simulation over a fold that is spoilt. */
async function runOver(spoilt: (fold: Fold) => Fold): Promise<RunSeed> {
  vi.resetModules()
  vi.doMock('#core/log/fold.ts', async importOriginal => {
    const real = await importOriginal<typeof import('#core/log/fold.ts')>()
    return { ...real, foldOps: spoilt(real.foldOps) }
  })
  return (await import('./run.ts')).runSeed
}

afterEach(() => {
  vi.doUnmock('#core/log/fold.ts')
  vi.resetModules()
})

describe('the simulation finds a fault that is planted', () => {
  it.each([
    ['era', 'a restored server goes on in its old era'],
    ['content hash', 'an identity that is taken counts as stored'],
    ['durable', 'an op is answered before it is durable'],
    ['outbox', 'what waits to be sent is not kept'],
  ] as const)('%s: %s', async (sabotage: Sabotage, _what: string) => {
    const { runSeed } = await import('./run.ts')
    expect(await firstBad(runSeed, sabotage)).not.toBeNull()
  })

  it('buried: a fact that was replaced before it came stands', async () => {
    const runSeed = await runOver(fold => (state, ops) => ({ ...fold(state, ops), buried: new Map() }))
    expect((await firstBad(runSeed))?.diverged).toBeGreaterThan(0)
  })

  it('replaces: a correction stands beside what it corrects', async () => {
    const without = (op: Op): Op => ({ ...op, facts: op.facts.map(fact => ({ ...fact, replaces: [] })) })
    const runSeed = await runOver(fold => (state, ops) => fold(state, [...ops].map(without)))
    expect((await firstBad(runSeed))?.diverged).toBeGreaterThan(0)
  })
})
