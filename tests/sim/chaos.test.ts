import { describe, expect, it } from 'vitest'
import { type Chaos, runChaos } from './chaos.ts'
import { troubles } from './trouble.ts'

// Source: the plan's promises: nothing acknowledged is lost, nothing counts twice, the words at the foot are true.
describe('two to six phones and a server through everything that can go wrong, 200 times', () => {
  it('lose nothing, double nothing, say nothing false, and end alike', async () => {
    const bad: string[] = []
    const chaos = await runChaos(1, 200, ({ seed, words }) => bad.push(`${seed}: ${words.join('; ')}`))
    expect(bad).toEqual([])
    const { lost, duplicated, diverged, falseMarks, outOfRights }: Chaos = chaos
    expect({ lost, duplicated, diverged, falseMarks, outOfRights }).toEqual({
      lost: 0,
      duplicated: 0,
      diverged: 0,
      falseMarks: 0,
      outOfRights: 0,
    })
    expect(chaos.acknowledged).toBeGreaterThanOrEqual(20_000)
    const kinds = [...troubles, 'forbidden', 'handed over', 'newer fact', 'newer op']
    expect(kinds.filter(kind => !chaos.faults[kind])).toEqual([])
  }, 240_000)

  it('are the same run for the same seed', async () => {
    const [one, again] = [await runChaos(7, 1, () => undefined), await runChaos(7, 1, () => undefined)]
    expect(again).toEqual(one)
  })
})
