import { expect, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import {
  chosenKey,
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

test('the desk deletes an outing for good, and each phone keeps its copy until it is removed there', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const birch = await openPhone(browser, 'Birch')
  await alder.page.goto(server.url)
  await startOuting(alder.page)
  await goToHole(alder.page, 1)
  await tapScore(alder.page, 'Alder', 5)
  await whenOnServer(alder.page)
  const link = await readInviteLink(alder.page)
  await joinBy(birch.page, link, 'Birch')
  await goToHole(birch.page, 1)
  await expect(chosenKey(birch.page, 'Alder', 5)).toBeVisible()

  await openTab(alder.page, 'Share')
  await alder.page.setViewportSize({ width: 320, height: 640 })
  await alder.page.getByRole('button', { name: 'Delete it from the server' }).click()
  await expect(alder.page.getByText(/^Quillmoor.*: 4 players\. .* nobody can undo it\.$/)).toBeVisible()
  await axeClean(alder.page, 'share', 'deleting it asked about')
  await alder.page.getByRole('button', { name: 'Delete it for good' }).click()
  await expect(alder.page.getByText('Deleted from the server. This phone still holds the outing.')).toBeVisible()
  await expect(alder.page.locator('.foot-words')).toContainText('deleted from the server')
  await axeClean(alder.page, 'share', 'deleted from the server')
  await expect(birch.page.locator('.foot-words')).toContainText('deleted from the server')
  await expect(birch.page.getByText('it was deleted. What this phone holds stays on it.')).toBeVisible()

  const rowan = await openPhone(browser, 'Rowan')
  await rowan.page.goto(link)
  await expect(rowan.page.getByText('This outing was deleted.')).toBeVisible()
  await axeClean(rowan.page, 'join', 'an outing that was deleted')

  await goToHole(birch.page, 2)
  await tapScore(birch.page, 'Birch', 4)
  await openTab(birch.page, 'Share')
  await expect(birch.page.getByRole('button', { name: 'Delete it from the server' })).toBeHidden()
  await birch.page.getByRole('button', { name: 'Remove the outing from this phone' }).click()
  await expect(birch.page.getByText('this may be the last copy')).toBeVisible()
  await axeClean(birch.page, 'share', 'removing it asked about')
  await birch.page.getByRole('button', { name: 'Remove it' }).click()
  await expect(birch.page.getByText('No outing on this phone yet.')).toBeVisible()
  noComplaints([alder, birch, rowan])
  await server.stop()
})
