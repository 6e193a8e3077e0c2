import { expect, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, type Tapped } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import {
  chosenKey,
  foot,
  fourBallAndPoints,
  goToHole,
  joinBy,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { noComplaints, openPhone, type Phone, whenKept } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const tappedUpTo = (holes: number): Tapped => ({
  players: fourPlayers,
  sides: [
    ['Alder', 'Cedar'],
    ['Birch', 'Rowan'],
  ],
  card: Object.fromEntries(fourPlayers.map(({ name, strokes }) => [name, strokes.slice(0, holes)])),
})

async function scoreAll({ page }: Phone, hole: number): Promise<void> {
  await goToHole(page, hole)
  for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[hole - 1] ?? 0)
}

test('an outing is started and scored with no server at all, and goes up when one is met', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  await alder.page.goto(server.url)
  await whenKept(alder.page)
  await server.kill()

  await alder.page.reload()
  await startOuting(alder.page, fourBallAndPoints)
  for (const hole of [1, 2]) await scoreAll(alder, hole)
  // The start is an act of its own.
  await expect(foot(alder.page)).toContainText('9 to send')
  await boardAgrees(alder.page, tappedUpTo(2))
  await goToHole(alder.page, 3)
  await tapScore(alder.page, 'Alder', fourPlayers[0]?.strokes[2] ?? 0)
  await expect(foot(alder.page)).toContainText('on this phone')
  await expect(foot(alder.page)).toContainText('10 to send')
  await expect(foot(alder.page)).not.toContainText('on the server')
  await axeClean(alder.page, 'every page of an outing', 'to send, no server')

  await server.start()
  await whenOnServer(alder.page)
  const birch = await openPhone(browser, 'Birch')
  await joinBy(birch.page, await readInviteLink(alder.page), 'Birch')
  await goToHole(birch.page, 3)
  await expect(chosenKey(birch.page, 'Alder', fourPlayers[0]?.strokes[2] ?? 0)).toBeVisible()
  for (const { name, strokes } of fourPlayers.slice(1)) await tapScore(birch.page, name, strokes[2] ?? 0)
  await boardAgrees(birch.page, tappedUpTo(3))
  await boardAgrees(alder.page, tappedUpTo(3))
  noComplaints([alder, birch])
  await server.stop()
})

test('a page opened again with the server away shows every score and takes more', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await scoreAll(alder, 1)
  await whenOnServer(alder.page)
  await whenKept(alder.page)
  await server.kill()

  await alder.page.reload()
  await goToHole(alder.page, 1)
  for (const { name, strokes } of fourPlayers) await expect(chosenKey(alder.page, name, strokes[0] ?? 0)).toBeVisible()
  await scoreAll(alder, 2)
  await expect(foot(alder.page)).toContainText('4 to send')
  await boardAgrees(alder.page, tappedUpTo(2))
  await server.start()
  await whenOnServer(alder.page)
  noComplaints([alder])
  await server.stop()
})

test('an invite says where it leads before it asks for a name, and with no signal can be tried again', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  const link = await readInviteLink(alder.page)
  await whenOnServer(alder.page)
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  await birch.page.goto(server.url)
  await whenKept(birch.page)
  await birch.context.setOffline(true)
  await birch.page.goto(link)
  await expect(birch.page.getByRole('alert')).toContainText('The server cannot be reached.')
  await expect(birch.page.getByRole('textbox', { name: 'Your name' })).toHaveCount(0)
  await birch.context.setOffline(false)
  await birch.page.getByRole('button', { name: 'Try again' }).click()
  await expect(birch.page.getByRole('heading', { name: 'Quillmoor' })).toBeVisible()
  await birch.page.getByRole('textbox', { name: 'Your name' }).fill('Birch')
  await birch.page.getByRole('button', { name: 'Join the outing' }).click()
  await expect(birch.page.getByRole('heading', { name: 'Alder' })).toBeVisible()

  // On the phone that is in already the same link just opens the outing.
  await birch.page.goto(link)
  await expect(birch.page.getByRole('heading', { name: 'Alder' })).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})
