import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, expect, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, type Tapped } from './kit/agree.ts'
import {
  fourBallAndPoints,
  goToHole,
  joinBy,
  type RoundToStart,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { openOtherPage } from './kit/other-page.ts'
import { openPhone, type Phone } from './kit/round.ts'
import { type ServerProcess, startServer } from './kit/server.ts'

/** The version before this one, as it was built: page and server. */
const root = fileURLToPath(new URL('../..', import.meta.url))
const previous = join(root, 'tests/fixtures/previous-version')

const tapped: Tapped = {
  players: fourPlayers,
  sides: [
    ['Alder', 'Cedar'],
    ['Birch', 'Rowan'],
  ],
  card: Object.fromEntries(fourPlayers.map(({ name, strokes }) => [name, strokes.slice(0, 2)])),
}

/** One phone starts, another joins, each puts in a hole for all; both boards say the same. */
async function playTwoHoles(
  server: ServerProcess,
  starts: Phone,
  joins: Phone,
  round: RoundToStart = fourBallAndPoints,
): Promise<void> {
  await startOuting(starts.page, round)
  const link = await readInviteLink(starts.page)
  expect(new URL(link).origin).toBe(server.url)
  await joinBy(joins.page, link, 'Birch')
  for (const [place, { page }] of [starts, joins].entries()) {
    await goToHole(page, place + 1)
    for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[place] ?? 0)
    await whenOnServer(page)
  }
  for (const { page } of [starts, joins]) await boardAgrees(page, tapped)
}

const openTwo = async (browser: Browser) =>
  [await openPhone(browser, 'Alder'), await openPhone(browser, 'Birch')] as const

test("the previous version's page plays with this server and this page", async ({ browser }) => {
  const server = await startServer()
  const [old, current] = await openTwo(browser)
  await openOtherPage(old.page, join(previous, 'client'), server.url)
  await playTwoHoles(server, old, current)
  await server.stop()
})

/** The server kept knows no terms for ties: an outing that has any waits on the phone until the server is the newer one. */
const knownBefore: RoundToStart = { ...fourBallAndPoints, details: { Stableford: { 'Stableford ties': 'stand' } } }

test("this page plays with the previous version's server and page", async ({ browser }) => {
  const server = await startServer(join(previous, 'server/main.js'))
  const [current, old] = await openTwo(browser)
  await openOtherPage(current.page, join(root, 'dist/client'), server.url)
  await playTwoHoles(server, current, old, knownBefore)
  await server.stop()
})
