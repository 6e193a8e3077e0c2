import { chromium, expect, test } from '@playwright/test'
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
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

test('on plain http an open page plays and says what it cannot do', async () => {
  const server = await startServer()
  // A name other than localhost is no secure origin, as an address of the club's own network is none.
  const browser = await chromium.launch({
    executablePath: chromiumPath,
    args: [...chromiumArgs, '--host-resolver-rules=MAP quillmoor.test 127.0.0.1'],
  })
  const url = server.url.replace('127.0.0.1', 'quillmoor.test')
  const [alder, birch] = [await openPhone(browser, 'Alder', { hasOutages: true }), await openPhone(browser, 'Birch')]
  await alder.page.goto(url)
  expect(await alder.page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([false, false])
  await expect(alder.page.getByText('This address is plain http.')).toBeVisible()
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
