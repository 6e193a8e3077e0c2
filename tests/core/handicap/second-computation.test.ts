import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { must } from '#core/values/assert.ts'
import { createDice, seedOfRun } from './dice.ts'
import { sums } from './second-sums.ts'

const total = 105_000

describe('core and the plain computation', () => {
  it(`agree on ${total} inputs, a tenth of them and more on exact halves`, () => {
    const seed = seedOfRun()
    const dice = createDice(seed)
    const kinds = Object.entries(sums)
    const halves: Record<string, number> = Object.fromEntries(kinds.map(([name]) => [name, 0]))
    for (let at = 0; at < total; at += 1) {
      const [name, compare] = must(kinds[at % kinds.length], 'a kind of sum')
      const { input, ours, plainly, isHalf } = compare(dice)
      // Comparing texts first keeps this fast; `expect` then prints what differs.
      if (JSON.stringify(ours) !== JSON.stringify(plainly)) {
        expect(ours, `seed ${seed}, ${name} of ${JSON.stringify(input)}`).toEqual(plainly)
      }
      if (isHalf) halves[name] = (halves[name] ?? 0) + 1
    }
    const half = Object.values(halves).reduce((sum, each) => sum + each, 0)
    console.info(`handicap sums: seed ${seed}, ${total} inputs, ${half} on exact halves: ${JSON.stringify(halves)}`)
    expect(half).toBeGreaterThanOrEqual(total / 10)
    expect(Object.entries(halves).filter(([name, count]) => count === 0 && name !== 'allocation')).toEqual([])
  })
})

describe('the plain computation', () => {
  it('imports nothing but node modules', () => {
    const file = fileURLToPath(new URL('../../reference/plain-handicap.ts', import.meta.url))
    const specifiers = [...readFileSync(file, 'utf8').matchAll(/(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g)].map(
      each => each[1],
    )
    expect(specifiers.filter(each => !each?.startsWith('node:'))).toEqual([])
  })
})
