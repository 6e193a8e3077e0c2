import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import react from '@vitejs/plugin-react'
import { build, type Plugin } from 'vite'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, type Tapped } from './kit/agree.ts'
import { faultsOf } from './kit/axe.ts'
import { fourBallAndPoints, goToHole, startOuting, tapKey, whenOnServer } from './kit/golfer.ts'
import { openOtherPage } from './kit/other-page.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

/** Tests of the tests: each plants a fault and sees the check turn red. */

const root = fileURLToPath(new URL('../..', import.meta.url))
const plantedFolder = join(root, '.cache/planted-client')

/** A fold that reads every score one too high. */
const offByOne: Plugin = {
  name: 'off-by-one',
  enforce: 'pre',
  transform(code, id) {
    if (!id.endsWith('core/log/fold.ts')) return null
    const planted = code.replace(
      'value: fact.value,',
      "value: fact.key.includes('/score/') ? Number(fact.value) + 1 : fact.value,",
    )
    if (planted === code) throw new Error('nothing planted: the fold has changed')
    return planted
  },
}

test('a fold that is off by one makes the comparison of the boards fail', async ({ browser }) => {
  await build({
    configFile: false,
    root: join(root, 'client'),
    logLevel: 'error',
    define: { __BUILD__: JSON.stringify('planted') },
    build: { outDir: plantedFolder, emptyOutDir: true, assetsInlineLimit: 0, modulePreload: { polyfill: false } },
    plugins: [react(), offByOne],
  })
  const server = await startServer()
  const [healthy, sick] = [await openPhone(browser, 'Alder'), await openPhone(browser, 'Alder')]
  await healthy.page.goto(server.url)
  await openOtherPage(sick.page, plantedFolder, server.url)
  const tapped: Tapped = {
    players: fourPlayers,
    sides: [
      ['Alder', 'Cedar'],
      ['Birch', 'Rowan'],
    ],
    card: Object.fromEntries(fourPlayers.map(({ name, strokes }) => [name, strokes.slice(0, 3)])),
  }
  for (const { page } of [healthy, sick]) {
    await startOuting(page, fourBallAndPoints)
    for (const hole of [1, 2, 3]) {
      await goToHole(page, hole)
      for (const { name, strokes } of fourPlayers) await tapKey(page, name, strokes[hole - 1] ?? 0)
    }
    await whenOnServer(page)
  }
  await boardAgrees(healthy.page, tapped)
  await expect(boardAgrees(sick.page, tapped, { timeout: 3_000 })).rejects.toThrow(/the board of/)
  await server.stop()
})

test('an error on the console makes the suite fail', async ({ browser }) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  await phone.page.goto(server.url)
  await expect(phone.page.getByRole('link', { name: 'Start an outing' })).toBeVisible()
  noComplaints([phone])
  await phone.page.evaluate(() => console.error('planted'))
  await expect.poll(() => phone.complaints).toEqual(['console: planted'])
  expect(() => noComplaints([phone])).toThrow(/planted/)
  await server.stop()
})

test('an accessibility fault makes the suite fail', async ({ browser }) => {
  const server = await startServer()
  const { page } = await openPhone(browser, 'Alder')
  await page.goto(server.url)
  await expect(page.getByRole('link', { name: 'Start an outing' })).toBeVisible()
  expect(await faultsOf(page)).toEqual([])
  await page.evaluate(() => {
    document.querySelector('main')?.append(document.createElement('button'))
  })
  expect(await faultsOf(page)).toEqual([expect.stringContaining('button-name')])
  await server.stop()
})
