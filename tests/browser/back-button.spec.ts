import { expect, test } from '@playwright/test'
import {
  chosenKey,
  fourBallAndPoints,
  joinBy,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

test('the back button brings the page back live, with what was scored meanwhile', async ({ browser }) => {
  const server = await startServer()
  const [alder, birch] = [await openPhone(browser, 'Alder'), await openPhone(browser, 'Birch')]
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await joinBy(birch.page, await readInviteLink(alder.page), 'Birch')
  await whenOnServer(birch.page)
  await birch.page.goto('about:blank')
  await alder.page.getByRole('link', { name: 'Hole', exact: true }).click()
  await tapScore(alder.page, 'Alder', 4)
  await whenOnServer(alder.page)
  await birch.page.goBack()
  await expect(chosenKey(birch.page, 'Alder', 4)).toBeVisible()
  await tapScore(birch.page, 'Birch', 5)
  await whenOnServer(birch.page)
  await expect(chosenKey(alder.page, 'Birch', 5)).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})

test('a page that was frozen and not thrown away is live again at once', async ({ browser }) => {
  const server = await startServer()
  const [alder, birch] = [await openPhone(browser, 'Alder'), await openPhone(browser, 'Birch')]
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await joinBy(birch.page, await readInviteLink(alder.page), 'Birch')
  await whenOnServer(birch.page)
  const say = (name: 'pagehide' | 'pageshow') =>
    birch.page.evaluate(event => void window.dispatchEvent(new PageTransitionEvent(event, { persisted: true })), name)
  await say('pagehide')
  await alder.page.getByRole('link', { name: 'Hole', exact: true }).click()
  await tapScore(alder.page, 'Alder', 4)
  await whenOnServer(alder.page)
  await expect(chosenKey(birch.page, 'Alder', 4)).toHaveCount(0)
  await say('pageshow')
  await expect(chosenKey(birch.page, 'Alder', 4)).toBeVisible()
  await tapScore(birch.page, 'Birch', 5)
  await expect(chosenKey(alder.page, 'Birch', 5)).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})
