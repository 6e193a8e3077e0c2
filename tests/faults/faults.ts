import { blockedSockets, poorNetwork, portal, silentLoss } from './bad-network.ts'
import { browserFaults } from './browser-faults.ts'
import { copiedFile, damagedPage, secondServer } from './data-folder.ts'
import type { Outcome } from './fault.ts'
import { diskFull } from './full-disk.ts'
import { killedUnderLoad, stoppedAndWoken } from './killed-server.ts'
import { ownNetworkFault } from './kit/own-network.ts'
import { meansHere } from './kit/small-disk.ts'

type Length = 'short' | 'long'
type Run = (length: Length) => Promise<readonly Outcome[]>

/** Every fault that the product is put through, in its short and its long form. */
export const faults: Readonly<Record<string, Run>> = {
  // Fifty kills, each ten in an outing of its own: a longer log than any day makes would only slow the phones down.
  killed: length =>
    length === 'long'
      ? eachInTurn([1, 2, 3, 4, 5], () => killedUnderLoad(10))
      : eachInTurn([1], () => killedUnderLoad(5)),
  stopped: async length => [await stoppedAndWoken(length === 'long' ? 10 : 1, 5_000)],
  'full-disk': length => eachInTurn(meansHere(), means => diskFull(length === 'long' ? 5 : 1, means)),
  'damaged-page': async length => [await damagedPage(length === 'long' ? 10 : 2)],
  'second-server': async length => [await secondServer(length === 'long' ? 10 : 1)],
  'copied-file': async length => [await copiedFile(length === 'long' ? 5 : 1)],
  'silent-loss': length =>
    eachInTurn(silences.slice(0, length === 'long' ? 4 : 3), ({ ways, isIdle }) =>
      silentLoss(length === 'long' && !isIdle ? 5 : 1, ways, isIdle),
    ),
  // In the long form alone; a machine that permits no network of its own has what the proxy shows.
  'silent-packets': async length => {
    if (length === 'short') return []
    const fault = ownNetworkFault()
    if (fault === null) {
      return eachInTurn(silences, ({ ways, isIdle }) => silentLoss(isIdle ? 1 : 3, ways, isIdle, 'own network'))
    }
    process.stderr.write(`  no network of its own is permitted here, so this is not run: ${fault}\n`)
    return []
  },
  'poor-network': async length => [await poorNetwork(length === 'long' ? 5 : 1, length === 'long' ? 5_000 : 1_500)],
  'blocked-socket': async length => [
    await blockedSockets(length === 'long' ? 5 : 1, length === 'long' ? 10_000 : 1_000, [
      'asked twice',
      'answered twice',
    ]),
  ],
  portal: async length => [await portal(length === 'long' ? 5 : 1, length === 'long' ? 20_000 : 2_000)],
  browser: length => browserFaults(length === 'long' ? 2 : 1),
}

/** The last waits for the sign of life that does not come. */
const silences = [
  { ways: ['up', 'down'], isIdle: false },
  { ways: ['up'], isIdle: false },
  { ways: ['down'], isIdle: false },
  { ways: ['up', 'down'], isIdle: true },
] as const

async function eachInTurn<T>(items: readonly T[], run: (item: T) => Promise<Outcome>): Promise<Outcome[]> {
  const outcomes: Outcome[] = []
  for (const item of items) outcomes.push(await run(item))
  return outcomes
}
