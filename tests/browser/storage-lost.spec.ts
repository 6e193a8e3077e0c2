import { type BrowserContext, expect, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import {
  chosenKey,
  foot,
  fourBallAndPoints,
  goToHole,
  joinBy,
  openTab,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { noComplaints, openPhone, type Phone, whenKept } from './kit/round.ts'
import { startServer } from './kit/server.ts'

async function scoreFirst({ page }: Phone): Promise<void> {
  await goToHole(page, 1)
  for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[0] ?? 0)
}

async function showsFirst({ page }: Phone): Promise<void> {
  await goToHole(page, 1)
  for (const { name, strokes } of fourPlayers) await expect(chosenKey(page, name, strokes[0] ?? 0)).toBeVisible()
}

/** How often a player stands on the board. */
const timesOnBoard = async ({ page }: Phone): Promise<number> => {
  await openTab(page, 'Board')
  await expect(page.getByRole('heading', { name: 'Board', exact: true })).toBeVisible()
  return page.getByText('Birch', { exact: true }).count()
}

test('a phone that lost its small storage opens the same outing with every score, with no signal', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, fourBallAndPoints)
  await scoreFirst(alder)
  await whenOnServer(page)
  await whenKept(page)
  await server.kill()
  await tapScore(page, 'Alder', 6)
  await expect(foot(page)).toContainText('1 to send')
  await page.evaluate(() => {
    localStorage.clear()
    sessionStorage.clear()
  })
  await page.reload()
  await expect(foot(page)).toContainText('1 to send')
  await expect(chosenKey(page, 'Alder', 6)).toBeVisible()
  await expect(page.getByRole('textbox', { name: 'Your name' })).toHaveCount(0)
  await server.start()
  await whenOnServer(page)
  noComplaints([alder])
  await server.stop()
})

test('a phone whose browser has thrown everything away gets it all back by the invite, and nobody is twice', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  const link = await readInviteLink(alder.page)
  const birch = await openPhone(browser, 'Birch')
  await joinBy(birch.page, link, 'Birch')
  await scoreFirst(birch)
  await whenOnServer(birch.page)
  const before = await timesOnBoard(birch)
  await clearAll(birch.context, birch, server.url)
  await joinBy(birch.page, link, 'Birch')
  await showsFirst(birch)
  expect(await timesOnBoard(birch)).toBe(before)
  await goToHole(birch.page, 2)
  await tapScore(birch.page, 'Birch', 5)
  await whenOnServer(birch.page)
  await goToHole(alder.page, 2)
  await expect(chosenKey(alder.page, 'Birch', 5)).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})

/** What a browser does after a week without a look, or when it needs the room. */
async function clearAll(context: BrowserContext, { page }: Phone, origin: string): Promise<void> {
  await page.goto('about:blank')
  const session = await context.newCDPSession(page)
  await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' })
  await session.detach()
}

test('a browser that keeps nothing plays while it has a signal, and says that nothing is saved', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  await alder.context.addInitScript(() => {
    const refused = () => {
      throw new DOMException('denied', 'SecurityError')
    }
    Object.defineProperty(window, 'localStorage', { get: refused })
    Object.defineProperty(window, 'sessionStorage', { get: refused })
    Object.defineProperty(window, 'indexedDB', { value: undefined })
  })
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, fourBallAndPoints)
  await expect(page.getByText('not saved: this phone’s storage is full or closed')).toBeVisible()
  const link = await readInviteLink(page)
  const birch = await openPhone(browser, 'Birch')
  await joinBy(birch.page, link, 'Birch')
  await goToHole(page, 1)
  await tapScore(page, 'Alder', 5)
  await goToHole(birch.page, 1)
  await expect(chosenKey(birch.page, 'Alder', 5)).toBeVisible()
  await tapScore(birch.page, 'Birch', 4)
  await expect(chosenKey(page, 'Birch', 4)).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})
