import { parseArgs } from 'node:util'
import { demoPlayers } from './demo/field.ts'
import { joinDemo, startDemo } from './demo/phone.ts'
import { playRound } from './demo/play.ts'

/** Plays four phones through one round against a running server: npm run demo -- [--server URL] [--pace SECONDS]. */
const values = valuesGiven()
const paceS = Number(values.pace)
if (!Number.isFinite(paceS) || paceS < 0 || paceS > 600) {
  console.error('demo: --pace is seconds between two scores, 0 to 600')
  process.exit(2)
}
const server = values.server.replace(/\/+$/, '')
const isThere = await fetch(`${server}/api/probe`).then(
  async answer => ((await answer.json()) as { readonly product?: string }).product === 'six-threes',
  () => false,
)
if (!isThere) {
  console.error(`demo: no Six Threes server answers at ${server}; start one with npm start, or name it with --server`)
  process.exit(1)
}
const first = await startDemo(server, 'Alder')
const others = demoPlayers.slice(1).map(({ name }) => joinDemo(first, name))
console.log(`Four phones play Quillmoor. Watch or score along: ${first.watchLink}`)
await playRound([first, ...others], { paceS, say: line => console.log(line) })
for (const phone of [first, ...others]) phone.stop()

function valuesGiven() {
  const options = {
    server: { type: 'string', default: `http://localhost:${process.env.PORT ?? '8686'}` },
    pace: { type: 'string', default: '1.5' },
  } as const
  try {
    return parseArgs({ options }).values
  } catch (fault) {
    console.error(`demo: ${(fault as Error).message.split('\n')[0]}`)
    process.exit(2)
  }
}
