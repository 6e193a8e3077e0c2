import { writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { nameOfLook } from '#tests/sheets/looks.ts'
import { makeSheets, stories } from '#tests/sheets/make-sheets.ts'

/** Contact sheets of every screen: npm run sheets -- [--look 390-day-100 …] [--story NAME …]. */
const folder = resolve('.cache/sheets')
const { look = [], story = Object.keys(stories) } = valuesGiven()
const { shots, missing } = await makeSheets(
  folder,
  each => look.length === 0 || look.some(asked => nameOfLook(each).includes(asked)),
  story,
  line => console.log(line),
)
const findings = shots.flatMap(({ look, name, findings }) =>
  findings.map(line => `${nameOfLook(look)} ${name}: ${line}`),
)
writeFileSync(join(folder, 'findings.txt'), findings.map(line => `${line}\n`).join(''))
console.log(`${shots.length} pictures on sheets in ${folder}; ${findings.length} lines in findings.txt`)
if (missing.length > 0) console.error(`sheets: no sheet shows ${missing.join(', ')}`)
process.exit(missing.length === 0 ? 0 : 1)

function valuesGiven() {
  const options = { look: { type: 'string', multiple: true }, story: { type: 'string', multiple: true } } as const
  try {
    return parseArgs({ options }).values
  } catch (fault) {
    console.error(`sheets: ${(fault as Error).message.split('\n')[0]}`)
    process.exit(2)
  }
}
