import { expect, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, settleDownload, type Tapped } from './kit/agree.ts'
import { seriousFaults } from './kit/axe.ts'
import {
  chosenKey,
  fourBallAndPoints,
  goToHole,
  joinBy,
  openTab,
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

test('cards are closed; a score that comes late waits in a list until it is accepted', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await joinBy(birch.page, await readInviteLink(alder.page), 'Birch')
  for (const hole of [1, 2]) {
    await goToHole(alder.page, hole)
    for (const { name, strokes } of fourPlayers) await tapScore(alder.page, name, strokes[hole - 1] ?? 0)
  }
  await whenOnServer(alder.page)
  await boardAgrees(birch.page, tapped)

  await birch.context.setOffline(true)
  await goToHole(birch.page, 2)
  await tapScore(birch.page, 'Birch', 6)
  await openTab(alder.page, 'Card')
  await alder.page.getByRole('button', { name: 'Close the cards' }).click()
  await expect(alder.page.getByText('The cards are closed.')).toBeVisible()
  await birch.context.setOffline(false)
  await whenOnServer(birch.page)

  await expect(alder.page.getByText(/Birch, hole 2: 6 by Birch at .*; closed with 5/)).toBeVisible()
  for (const { page } of [alder, birch]) await boardAgrees(page, tapped)
  const before = await settleDownload(alder.page, 'whole')
  expect(before.late).toMatchObject([{ hole: 2, score: 6, closed: 5 }])

  await openTab(alder.page, 'Card')
  await alder.page.getByRole('button', { name: 'Accept Birch hole 2: 6' }).click()
  const birchNow = fourPlayers.map(({ name, strokes }) => [name, name === 'Birch' ? [4, 6] : strokes.slice(0, 2)])
  for (const { page } of [alder, birch]) await boardAgrees(page, { ...tapped, card: Object.fromEntries(birchNow) })
  noComplaints([alder, birch])
  await server.stop()
})

test('undo gives back what stood; a watching phone has no keys; the plain file opens as an outing', async ({
  browser,
}) => {
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
  noComplaints([alder, watcher, other])
  await server.stop()
})

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every page is free of serious accessibility faults, ${colorScheme}`, async ({ browser }) => {
    const server = await startServer()
    const { page } = await openPhone(browser, 'Alder')
    await page.emulateMedia({ colorScheme })
    await page.goto(server.url)
    await expect(page.getByRole('link', { name: 'Start an outing' })).toBeVisible()
    expect(await seriousFaults(page)).toEqual([])
    await page.getByRole('link', { name: 'Start an outing' }).click()
    await page.getByRole('button', { name: 'Start the outing' }).click()
    await expect(page.getByText('Not started yet. Nothing is lost:')).toBeVisible()
    expect(await seriousFaults(page)).toEqual([])
    await page.goto(server.url)
    await startOuting(page, fourBallAndPoints)
    const link = await readInviteLink(page)
    for (const tab of ['Share', 'Hole', 'Board', 'Card'] as const) {
      await openTab(page, tab)
      expect([tab, await seriousFaults(page)]).toEqual([tab, []])
    }
    await page.goto(link)
    await expect(page.getByRole('textbox', { name: 'Your name' })).toBeVisible()
    expect(await seriousFaults(page)).toEqual([])
    await server.stop()
  })
}
