import { expect, test } from '@playwright/test'
import { startBadProxy } from '#tests/kit/bad-proxy.ts'
import { chosenKey, foot, fourBallAndPoints, goToHole, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone, whenKept } from './kit/round.ts'
import { startServer } from './kit/server.ts'

test('a blocked web socket: the page sends by plain requests', async ({ browser }) => {
  const server = await startServer()
  const proxy = await startBadProxy(server.url)
  proxy.set({ kind: 'no web sockets' })
  const phone = await openPhone(browser, 'Alder', { hasOutages: true })
  await phone.page.goto(proxy.url)
  await startOuting(phone.page, fourBallAndPoints)
  await goToHole(phone.page, 1)
  await tapScore(phone.page, 'Alder', 4)
  await whenOnServer(phone.page)
  noComplaints([phone])
  proxy.close()
  await server.stop()
})

test('a captive portal is neither taken for the server nor kept as the page, and all is sent behind it', async ({
  browser,
}) => {
  const server = await startServer()
  const proxy = await startBadProxy(server.url)
  const phone = await openPhone(browser, 'Alder', { hasOutages: true })
  const { page } = phone
  await page.goto(proxy.url)
  await startOuting(page, fourBallAndPoints)
  await whenOnServer(page)
  await whenKept(page)

  proxy.set({ kind: 'portal' })
  await goToHole(page, 1)
  await tapScore(page, 'Alder', 4)
  await expect(foot(page)).toContainText('1 to send')
  await page.reload()
  await expect(chosenKey(page, 'Alder', 4)).toBeVisible()
  await tapScore(page, 'Birch', 5)
  await expect(foot(page)).toContainText('2 to send')
  await expect(foot(page)).not.toContainText('on the server')

  proxy.set({ kind: 'none' })
  await whenOnServer(page)
  await page.reload()
  await expect(chosenKey(page, 'Birch', 5)).toBeVisible()
  noComplaints([phone])
  proxy.close()
  await server.stop()
})
