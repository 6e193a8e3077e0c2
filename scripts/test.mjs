// Sets up what is missing, runs every check and prints one line of totals: node scripts/test.mjs [step …]
import './setup/node-version.mjs'
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { findChromium } from './setup/chromium.mjs'
import { cache, root } from './setup/places.mjs'
import { runSetup } from './setup/run.mjs'
import { say } from './setup/say.mjs'
import { missingTests, parseFailureRows } from './test/failure-rows.mjs'
import { steps } from './test/steps.mjs'

const totalsFile = join(cache, 'totals')
const asked = process.argv.slice(2)
const unknown = asked.find(name => !Object.hasOwn(steps, name))
if (unknown !== undefined) {
  say(`Unknown step "${unknown}"; there are ${Object.keys(steps).join(', ')}.`)
  process.exit(2)
}
const chosen = Object.entries(steps).filter(([name]) => asked.length === 0 || asked.includes(name))

rmSync(totalsFile, { force: true })
await runSetup([...new Set(chosen.flatMap(([, step]) => step.needs))])
const chromium = findChromium()
if (chromium !== null) process.env.CHROMIUM_PATH = chromium

let passed = 0
let failed = 0
const ran = []
for (const [name, step] of chosen) {
  process.stdout.write(`\n== ${name}\n`)
  const counts = await step.run()
  process.stdout.write(`== ${name}: ${counts.passed} passed, ${counts.failed} failed\n`)
  passed += counts.passed
  failed += counts.failed
  ran.push(...(counts.ran ?? []))
}

// Only a whole run can say that a test is missing.
if (asked.length === 0) {
  const missing = missingTests(parseFailureRows(readFileSync(join(root, 'tests', 'README.md'), 'utf8')), ran)
  process.stdout.write(`\n== failure modes\n${missing.map(line => `${line}\n`).join('')}`)
  if (missing.length === 0) passed += 1
  failed += missing.length
}

const totals = `${passed} passed, ${failed} failed\n`
mkdirSync(cache, { recursive: true })
writeFileSync(totalsFile, totals)
process.stdout.write(`\n${totals}`)
process.exitCode = failed === 0 && passed > 0 ? 0 : 1
