import { expect, type Page, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, type Tapped } from './kit/agree.ts'
import { choosePictures, picturesOfCodes } from './kit/codes.ts'
import { chosenKey, fourBallAndPoints, goToHole, openTab, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone, type Phone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const tappedUpTo = (holes: number): Tapped => ({
  players: fourPlayers,
  sides: [
    ['Alder', 'Cedar'],
    ['Birch', 'Rowan'],
  ],
  card: Object.fromEntries(fourPlayers.map(({ name, strokes }) => [name, strokes.slice(0, holes)])),
})

async function scoreHoles({ page }: Phone, holes: readonly number[]): Promise<void> {
  for (const hole of holes) {
    await goToHole(page, hole)
    for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[hole - 1] ?? 0)
  }
}

/** The codes of the whole outing, photographed. */
async function photographed(page: Page): Promise<Buffer[]> {
  await openTab(page, 'Share')
  return picturesOfCodes(page.getByRole('region', { name: 'No signal? Hand over' }))
}

test('with no signal a phone hands over to another by codes, and both go on when a server is met', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  for (const { page } of [alder, birch]) {
    await page.goto(server.url)
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => null))
  }
  await server.kill()
  for (const { page } of [alder, birch]) await page.reload()
  await startOuting(alder.page, fourBallAndPoints)
  await scoreHoles(alder, [1, 2])

  const pictures = await photographed(alder.page)
  expect(pictures.length).toBeGreaterThan(1)
  await birch.page.getByRole('region', { name: 'From another phone' }).getByLabel('Your name').fill('Birch')
  const [first, ...rest] = pictures.toReversed()
  if (first === undefined) throw new Error('there is a code')
  await choosePictures(birch.page, [first])
  await expect(birch.page.getByRole('status').filter({ hasText: `1 of ${pictures.length} read` })).toBeVisible()
  await choosePictures(birch.page, rest)
  await expect(birch.page.getByRole('heading', { name: 'Alder' })).toBeVisible()
  await goToHole(birch.page, 2)
  for (const { name, strokes } of fourPlayers) await expect(chosenKey(birch.page, name, strokes[1] ?? 0)).toBeVisible()
  await scoreHoles(birch, [3])
  await boardAgrees(birch.page, tappedUpTo(3))

  // Back again, by the same way, to the phone that began.
  const back = await photographed(birch.page)
  await alder.page.goto(`${server.url}/#/`)
  await choosePictures(alder.page, back)
  await boardAgrees(alder.page, tappedUpTo(3))
  await scoreHoles(alder, [4])

  await server.start()
  for (const { page } of [alder, birch]) await whenOnServer(page)
  for (const { page } of [alder, birch]) await boardAgrees(page, tappedUpTo(4))
  noComplaints([alder, birch])
  await server.stop()
})
