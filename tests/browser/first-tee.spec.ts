import { expect, test } from '@playwright/test'
import { seriousFaults } from './kit/axe.ts'
import { chosenKey, fourBallAndPoints, goToHole, openTab, startOuting, tapScore } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'
import { createFinger } from './kit/taps.ts'

test("last week's game again: at most 8 taps from the list of outings to the first score", async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, fourBallAndPoints)
  await goToHole(page, 1)
  await tapScore(page, 'Alder', 5)
  await page.goto(`${server.url}/#/`)

  const finger = createFinger()
  const again = page.getByRole('button', { name: 'Play again: Quillmoor' })
  await expect(again).toContainText('Alder, Birch, Cedar, Rowan')
  await expect(again).toContainText('Stableford, Four-ball match')
  expect(await seriousFaults(page)).toEqual([])
  await finger.tap(again)
  await expect(page.getByText('Quillmoor, 18 holes, par 72')).toBeVisible()
  await expect(page.getByRole('textbox', { name: 'Player 3 Course Handicap' })).toHaveValue('21')
  await expect(page.getByRole('radio', { name: 'Alder & Cedar v Birch & Rowan' })).toBeChecked()
  expect(await seriousFaults(page)).toEqual([])
  await finger.tap(page.getByRole('button', { name: 'Start the outing' }))
  await finger.tap(page.getByRole('button', { name: 'Birch 4', exact: true }))
  await expect(chosenKey(page, 'Birch', 4)).toBeVisible()
  expect(finger.taps()).toBeLessThanOrEqual(8)

  // A new outing of its own: nothing of the old one's scores, and the old one is still there.
  await openTab(page, 'Card')
  const first = page.getByRole('row').filter({ has: page.getByRole('link', { name: 'Hole 1', exact: true }) })
  const cells = await first.getByRole('cell').allInnerTexts()
  expect(cells.slice(1).map(text => text.trim())).toEqual(['', '4', '', ''])
  await page.goto(`${server.url}/#/`)
  await expect(page.getByRole('region', { name: 'On this phone' }).getByRole('listitem')).toHaveCount(2)
  await expect(page.getByRole('button', { name: /^Play again/ })).toHaveCount(1)
  noComplaints([alder])
  await server.stop()
})
