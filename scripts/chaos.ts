import { parseArgs } from 'node:util'
import { importAsBuilt } from '#tests/kit/as-built.ts'
import { commitOf } from './commit-of.ts'

/** Runs seeds of the simulation: npm run --silent chaos -- --seeds N [--first S]. Standard output is the JSON alone. */
const { seeds, first } = numbersGiven()
const { runChaos, isBad } = await importAsBuilt<typeof import('#tests/sim/chaos.ts')>('sim/chaos.ts')
const chaos = await runChaos(first, seeds, ({ seed, words }) => {
  process.stderr.write(`seed ${seed}:\n${words.map(line => `  ${line}\n`).join('')}`)
})
process.stdout.write(`${JSON.stringify({ commit: commitOf(), ...chaos })}\n`)
process.exit(isBad(chaos) ? 1 : 0)

function numbersGiven(): { readonly seeds: number; readonly first: number } {
  const options = { seeds: { type: 'string', default: '200' }, first: { type: 'string', default: '1' } } as const
  try {
    const { values } = parseArgs({ options })
    return { seeds: whole('seeds', values.seeds), first: whole('first', values.first) }
  } catch (error) {
    process.stderr.write(`chaos: ${error instanceof Error ? error.message : error}\n`)
    process.exit(2)
  }
}

function whole(name: string, text: string): number {
  if (!/^[1-9]\d{0,8}$/.test(text)) throw new Error(`--${name} is a whole number from 1`)
  return Number(text)
}
