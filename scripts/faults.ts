import { parseArgs } from 'node:util'
import type { Outcome } from '#tests/faults/fault.ts'
import { faults } from '#tests/faults/faults.ts'
import { commitOf } from './commit-of.ts'

/**
 * Real faults on real processes: npm run --silent faults -- [--only NAME] [--short]. Standard output is the JSON alone.
 * NAME is the beginning of names; they are listed where none fits.
 */
const { chosen, isShort } = asked()
const outcomes: Outcome[] = []
for (const [name, run] of chosen) {
  process.stderr.write(`${name} …\n`)
  for (const outcome of await run(isShort ? 'short' : 'long')) {
    outcomes.push(outcome)
    for (const line of outcome.words) process.stderr.write(`  ${outcome.fault}: ${line}\n`)
  }
}
const sum = (count: 'lost' | 'duplicated' | 'falseMarks'): number =>
  outcomes.reduce((total, outcome) => total + outcome[count], 0)
const totals = { lost: sum('lost'), duplicated: sum('duplicated'), falseMarks: sum('falseMarks') }
process.stdout.write(`${JSON.stringify({ commit: commitOf(), ...totals, faults: outcomes })}\n`)
process.exit(outcomes.some(({ words }) => words.length > 0) ? 1 : 0)

function asked() {
  const options = { only: { type: 'string', default: '' }, short: { type: 'boolean', default: false } } as const
  try {
    const { values } = parseArgs({ options })
    const found = Object.entries(faults).filter(([name]) => name.startsWith(values.only))
    if (found.length === 0) throw new Error(`there are ${Object.keys(faults).join(', ')}`)
    return { chosen: found, isShort: values.short }
  } catch (error) {
    process.stderr.write(`faults: ${error instanceof Error ? error.message : error}\n`)
    process.exit(2)
  }
}
