import { benchCold } from '#tests/bench/cold.ts'
import { benchLive } from '#tests/bench/live.ts'
import { benchPlan } from '#tests/bench/plan.ts'
import { benchScript } from '#tests/bench/script.ts'
import { benchStandings } from '#tests/bench/standings.ts'
import { benchTap } from '#tests/bench/tap.ts'
import { benchThroughput } from '#tests/bench/throughput.ts'

const benches = {
  live: benchLive,
  throughput: benchThroughput,
  standings: benchStandings,
  script: benchScript,
  tap: benchTap,
  cold: benchCold,
  plan: benchPlan,
}

const name = process.argv[2] ?? ''
const bench = Object.entries(benches).find(([known]) => known === name)?.[1]
if (bench === undefined) {
  console.error(`bench: no measurement is called "${name}"; there are ${Object.keys(benches).join(', ')}`)
  process.exit(2)
}
const result = await bench()
console.log(JSON.stringify(result))
// Open sockets would keep the process.
process.exit(result.holds ? 0 : 1)
