import { expect, type Page, test } from '@playwright/test'
import { must } from '#core/values/assert.ts'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, settleDownload, type Tapped } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import {
  chosenKey,
  foot,
  fourBallAndPoints,
  goToHole,
  joinBy,
  openTab,
  type RoundToStart,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const tapped: Tapped = {
  players: fourPlayers,
  sides: [
    ['Alder', 'Cedar'],
    ['Birch', 'Rowan'],
  ],
  card: Object.fromEntries(fourPlayers.map(({ name, strokes }) => [name, strokes.slice(0, 2)])),
}

/** Nine holes from the 5th; the figures are strokes for nine holes. */
const [alderOfNine, birchOfNine] = [
  { ...must(fourPlayers[0], 'Alder'), courseHandicap: 6 },
  { ...must(fourPlayers[1], 'Birch'), courseHandicap: 2 },
]
const nine: RoundToStart = {
  players: [alderOfNine, birchOfNine],
  games: ['Stroke play, net', 'Singles match'],
  nineFrom: 5,
  handicap: 'Strokes',
}

interface NineBoard {
  readonly alder: number
  readonly birch: number
  readonly match: string
}

/**
 * Worked by hand. Strokes go by the rank of the stroke index among the nine (Rules of Handicapping 2024, Appendix E):
 * 5, 2, 7, 1, 9, 4, 8, 3, 6. Gross 44 less 6, gross 39 less 2. In the match Alder receives the difference of 4, on
 * 5, 2, 7, 1, and from the 5th on: halved, Alder, Alder, Birch, Birch, halved, halved, Birch, halved.
 */
const asPlayed: NineBoard = { alder: 38, birch: 37, match: 'Birch won 1 up' }
/** With Birch's 6 on the last hole, the 4th, Alder wins that hole. */
const withLateScore: NineBoard = { alder: 38, birch: 38, match: 'halved' }

async function nineBoardSays(page: Page, { alder, birch, match }: NineBoard): Promise<void> {
  await openTab(page, 'Board')
  const lines = page.getByRole('region', { name: 'Stroke play, net' }).getByRole('listitem')
  await expect(lines.filter({ hasText: 'Alder' })).toHaveText(new RegExp(`Alder .* ${alder} \\S+$`))
  await expect(lines.filter({ hasText: 'Birch' })).toHaveText(new RegExp(`Birch .* ${birch} \\S+$`))
  await expect(page.getByRole('region', { name: 'Singles match' })).toContainText(match)
}

test('nine holes from the 5th: cards are closed, and a score that comes late waits until it is accepted', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  await alder.page.goto(server.url)
  await startOuting(alder.page, nine)
  await expect(alder.page.getByRole('heading', { name: 'Hole 5', exact: true })).toBeVisible()
  await joinBy(birch.page, await readInviteLink(alder.page), 'Birch')
  for (const hole of [5, 6, 7, 8, 9, 1, 2, 3, 4]) {
    await goToHole(alder.page, hole)
    for (const { name, strokes } of nine.players) await tapScore(alder.page, name, strokes[hole - 1] ?? 0)
  }
  await nineBoardSays(alder.page, asPlayed)
  await goToHole(alder.page, 4)
  await tapScore(alder.page, 'Alder', 8)
  await expect(chosenKey(alder.page, 'Alder', 8)).toBeVisible()
  await openTab(alder.page, 'Card')
  await alder.page.getByRole('button', { name: 'Undo: Alder changed Alder’s 4th from 5 to 8' }).click()
  await whenOnServer(alder.page)
  for (const { page } of [alder, birch]) await nineBoardSays(page, asPlayed)

  await birch.context.setOffline(true)
  await goToHole(birch.page, 4)
  await tapScore(birch.page, 'Birch', 6)
  await expect(foot(birch.page)).toContainText('1 to send')
  await openTab(alder.page, 'Card')
  await expect(alder.page.getByText('Every hole is written.')).toBeVisible()
  await alder.page.getByRole('button', { name: 'Close the cards' }).click()
  await expect(alder.page.getByText('The cards are closed.')).toBeVisible()
  await whenOnServer(alder.page)
  await birch.context.setOffline(false)
  await whenOnServer(birch.page)

  await expect(alder.page.getByText(/Birch, hole 4: 6 by Birch at .*; closed with 5/)).toBeVisible()
  await axeClean(alder.page, 'card', 'a score late on a closed card')
  for (const { page } of [alder, birch]) await nineBoardSays(page, asPlayed)
  const before = await settleDownload(alder.page, 'whole')
  expect(before.late).toMatchObject([{ hole: 4, score: 6, closed: 5 }])

  await alder.page.getByRole('button', { name: 'Accept Birch hole 4: 6' }).click()
  for (const { page } of [alder, birch]) await nineBoardSays(page, withLateScore)
  noComplaints([alder, birch])
  await server.stop()
})

test('undo gives back what stood; a phone that may not score has no keys; both files open', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  for (const hole of [1, 2]) {
    await goToHole(alder.page, hole)
    for (const { name, strokes } of fourPlayers) await tapScore(alder.page, name, strokes[hole - 1] ?? 0)
  }
  await tapScore(alder.page, 'Rowan', 8)
  await expect(chosenKey(alder.page, 'Rowan', 8)).toBeVisible()
  await openTab(alder.page, 'Card')
  await alder.page.getByRole('button', { name: 'Undo: Alder changed Rowan’s 2nd from 6 to 8' }).click()
  await boardAgrees(alder.page, tapped)

  await openTab(alder.page, 'Share')
  await alder.page.getByRole('radio', { name: 'to watch only' }).check({ force: true })
  await expect(alder.page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  const watch = await alder.page.getByRole('textbox', { name: 'Invite link' }).inputValue()
  const watcher = await openPhone(browser, 'Oak')
  await joinBy(watcher.page, watch, 'Oak')
  await boardAgrees(watcher.page, tapped)
  await openTab(watcher.page, 'Hole')
  await expect(watcher.page.getByText('This phone only watches.')).toBeVisible()
  await expect(watcher.page.getByRole('button', { name: /^Alder \d/ })).toHaveCount(0)
  await axeClean(watcher.page, 'hole', 'only watching')

  await openTab(alder.page, 'Card')
  const downloading = alder.page.waitForEvent('download')
  await alder.page.getByRole('link', { name: 'Download the outing file, plain' }).click()
  const file = await (await downloading).path()
  const other = await openPhone(browser, 'Elm')
  await other.page.goto(server.url)
  await other.page.getByRole('region', { name: 'Open from a file' }).getByLabel('Your name').fill('Elm')
  await other.page.getByLabel('Choose a file').setInputFiles(file)
  await expect(other.page.getByRole('heading', { name: 'Alder' })).toBeVisible()
  await boardAgrees(other.page, tapped)

  await openTab(alder.page, 'Card')
  const downloadingWhole = alder.page.waitForEvent('download')
  await alder.page.getByRole('link', { name: 'Download the outing file, whole' }).click()
  const reader = await openPhone(browser, 'Hazel')
  await reader.page.goto(server.url)
  await reader.page.getByLabel('Choose a file').setInputFiles(await (await downloadingWhole).path())
  await expect(reader.page.getByText('This phone only has the file.')).toBeVisible()
  await expect(reader.page.getByRole('button', { name: /^Alder \d/ })).toHaveCount(0)
  await axeClean(reader.page, 'hole', 'only the file')
  await boardAgrees(reader.page, tapped)
  noComplaints([alder, watcher, other, reader])
  await server.stop()
})
