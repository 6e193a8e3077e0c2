import { appendFileSync, cpSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import { fourBallAndPoints, openTab, startOuting } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

test('a newer page waits, is offered on the page of all outings alone, and comes by one tap', async ({ browser }) => {
  const build = join(root, `.cache/newer-page-${process.pid}`)
  cpSync(join(root, 'dist'), build, { recursive: true })
  const server = await startServer(join(build, 'server/main.js'))
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  const offer = page.getByRole('button', { name: 'A newer version is here: take it now' })
  await page.goto(server.url)
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null))
  await expect(page.getByText('This page opens with no signal.')).toBeVisible()
  await expect(offer).toHaveCount(0)
  await startOuting(page, fourBallAndPoints)

  appendFileSync(join(build, 'client/worker.js'), '\n// newer\n')
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready
    await registration.update()
  })
  await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null)).toBe(true)
  for (const tab of ['Hole', 'Board', 'Card', 'Share'] as const) {
    await openTab(page, tab)
    await expect(page.getByRole('link', { name: tab, exact: true })).toHaveAttribute('aria-current', 'page')
    await expect(offer).toHaveCount(0)
  }
  await page.goto(`${server.url}/#/`)
  await offer.click()
  await expect(offer).toHaveCount(0)
  await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting)).toBeNull()
  await expect(page.getByRole('link', { name: /Quillmoor/ })).toBeVisible()
  noComplaints([alder])
  await server.stop()
  rmSync(build, { recursive: true })
})
