import { type Browser, chromium, expect, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import { chromiumArgs, chromiumPath } from './kit/chromium.ts'
import {
  chosenKey,
  foot,
  fourBallAndPoints,
  joinBy,
  openTab,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { neverIdle } from './kit/never-idle.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { type ServerProcess, startServer } from './kit/server.ts'

test('on plain http an open page plays and says what it cannot do', async () => {
  const server = await startServer()
  const { browser, url } = await openPlainHttp(server)
  const [alder, birch] = [await openPhone(browser, 'Alder', { hasOutages: true }), await openPhone(browser, 'Birch')]
  await alder.page.goto(url)
  expect(await alder.page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([false, false])
  await expect(alder.page.getByText('This address is plain http.')).toBeVisible()
  await axeClean(alder.page, 'home', 'on plain http')
  await startOuting(alder.page, fourBallAndPoints)
  await joinBy(birch.page, await readInviteLink(alder.page), 'Birch')
  await tapScore(birch.page, 'Birch', 5)
  await whenOnServer(birch.page)
  await alder.page.getByRole('link', { name: 'Hole', exact: true }).click()
  await expect(chosenKey(alder.page, 'Birch', 5)).toBeVisible()

  await server.kill()
  await tapScore(alder.page, 'Alder', 4)
  await expect(foot(alder.page)).toContainText('on this phone')
  await expect(foot(alder.page)).toContainText('1 to send')
  // What was never looked at is here all the same.
  await openTab(alder.page, 'Card')
  await expect(alder.page.getByRole('heading', { name: 'Card', exact: true })).toBeVisible()
  await openTab(alder.page, 'Board')
  await expect(alder.page.getByRole('heading', { name: 'Board', exact: true })).toBeVisible()
  await server.start()
  await whenOnServer(alder.page)
  noComplaints([alder])
  await browser.close()
  await server.stop()
})

test('a screen that was never fetched says so with no signal, and comes by a tap with one', async () => {
  const server = await startServer()
  const { browser, url } = await openPlainHttp(server)
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const { page } = alder
  await neverIdle(page)
  await page.goto(url)
  await startOuting(page, fourBallAndPoints)
  await whenOnServer(page)

  await server.kill()
  await openTab(page, 'Card')
  const notHere = page.getByRole('heading', { name: 'This part of the app is not on this phone yet.' })
  await expect(notHere).toBeVisible()
  await axeClean(page, 'every page', 'not fetched yet')
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(page.getByRole('button', { name: 'Try again' })).toBeEnabled()
  await expect(notHere).toBeVisible()
  await page.getByRole('button', { name: 'Back' }).click()
  await tapScore(page, 'Alder', 4)
  await page.getByRole('button', { name: 'More on this hole' }).click()
  await expect(page.getByText('It could not be fetched.')).toBeVisible()
  await axeClean(page, 'hole', 'more: not fetched yet')

  await server.start()
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(page.getByText('It could not be fetched.')).toHaveCount(0)
  await openTab(page, 'Card')
  await expect(page.getByRole('heading', { name: 'Card', exact: true })).toBeVisible()
  await whenOnServer(page)
  noComplaints([alder])
  await browser.close()
  await server.stop()
})

/** A name other than localhost is no secure origin, as an address of the club's own network is none. */
async function openPlainHttp(server: ServerProcess): Promise<{ readonly browser: Browser; readonly url: string }> {
  const browser = await chromium.launch({
    executablePath: chromiumPath,
    args: [...chromiumArgs, '--host-resolver-rules=MAP quillmoor.test 127.0.0.1'],
  })
  return { browser, url: server.url.replace('127.0.0.1', 'quillmoor.test') }
}
