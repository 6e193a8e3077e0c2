import { cpSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import { fourBallAndPoints, openTab, startOuting } from './kit/golfer.ts'
import { neverIdle } from './kit/never-idle.ts'
import { noComplaints, openPhone, whenKept } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const headings = { Hole: 'Hole 1', Board: 'Board', Card: 'Card', Share: 'Share' }

test('a newer page waits, the older one goes on whole, and the newer comes by one tap between outings', async ({
  browser,
}) => {
  const build = join(root, `.cache/newer-page-${process.pid}`)
  cpSync(join(root, 'dist'), build, { recursive: true })
  const server = await startServer(join(build, 'server/main.js'))
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await neverIdle(page)
  const offer = page.getByRole('button', { name: 'A newer version is here: take it now' })
  await page.goto(server.url)
  await whenKept(page)
  await expect(page.getByText('This page opens with no signal.')).toBeVisible()
  await expect(offer).toHaveCount(0)
  await startOuting(page, fourBallAndPoints)

  renameScripts(join(build, 'client'))
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready
    await registration.update()
  })
  await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null)).toBe(true)
  // None but the hole was opened before, and the server no longer has them by the names that this page knows.
  for (const tab of ['Hole', 'Board', 'Card', 'Share'] as const) {
    await openTab(page, tab)
    await expect(page.getByRole('heading', { name: headings[tab], exact: true })).toBeVisible()
    await expect(offer).toHaveCount(0)
  }
  await page.goto(`${server.url}/#/`)
  await expect(offer).toBeVisible()
  await axeClean(page, 'home', 'a newer page waits')
  await offer.click()
  await expect(offer).toHaveCount(0)
  await expect.poll(() => page.evaluate(async () => (await navigator.serviceWorker.ready).waiting)).toBeNull()
  await expect(page.getByRole('link', { name: /Quillmoor/ })).toBeVisible()
  noComplaints([alder])
  await server.stop()
  rmSync(build, { recursive: true })
})

/** The same page with other names for its scripts, as every change of one gives it. */
function renameScripts(client: string): void {
  const assets = join(client, 'assets')
  const scripts = readdirSync(assets).filter(file => file.endsWith('.js'))
  const inNewer = (text: string) => scripts.reduce((all, file) => all.replaceAll(file, newer(file)), text)
  const files = [...scripts.map(file => join(assets, file)), join(client, 'index.html'), join(client, 'worker.js')]
  for (const file of files) writeFileSync(file, inNewer(readFileSync(file, 'utf8')))
  for (const file of scripts) renameSync(join(assets, file), join(assets, newer(file)))
}

const newer = (file: string): string => file.replace(/\.js$/, '-newer.js')
