import { expect, type Page, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, boardTellsSettled, settleAgrees, settleDownload, type Tapped } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import { choosePictures, picturesOfCodes } from './kit/codes.ts'
import { chosenKey, fourBallAndPoints, openTab, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { installPhone } from './kit/installed-phone.ts'
import { noComplaints } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const tappedUpTo = (holes: number): Tapped => ({
  players: fourPlayers,
  sides: [
    ['Alder', 'Cedar'],
    ['Birch', 'Rowan'],
  ],
  card: Object.fromEntries(fourPlayers.map(({ name, strokes }) => [name, strokes.slice(0, holes)])),
})

/** Nine holes for all four, from the hole that the page is on. */
async function scoreNine(page: Page, from: 1 | 10): Promise<void> {
  for (let hole = from; hole < from + 9; hole++) {
    await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
    for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[hole - 1] ?? 0)
    if (hole % 9 === 0) return
    await page.getByRole('button', { name: 'Next hole' }).click()
    if (hole % 3 === 0) await page.getByRole('button', { name: `To hole ${hole + 1}` }).click()
  }
}

/** The codes of the whole outing, photographed. */
async function photographed(page: Page): Promise<Buffer[]> {
  await openTab(page, 'Share')
  return picturesOfCodes(page.getByRole('region', { name: 'No signal? Hand over' }))
}

test('installed once and started again with no network: one phone scores nine holes, hands over by codes, the other scores nine', async () => {
  const server = await startServer()
  const phones = [await installPhone('Alder', server.url), await installPhone('Birch', server.url)] as const
  await server.kill()
  for (const phone of phones) {
    await phone.restart()
    await phone.now().page.goto(server.url)
  }
  const [alder, birch] = [phones[0].now(), phones[1].now()]
  await startOuting(alder.page, fourBallAndPoints)
  await scoreNine(alder.page, 1)

  const pictures = await photographed(alder.page)
  expect(pictures.length).toBeGreaterThan(1)
  await axeClean(alder.page, 'share', 'codes shown')
  await birch.page.getByRole('region', { name: 'From another phone' }).getByLabel('Your name').fill('Birch')
  const [first, ...rest] = pictures.toReversed()
  if (first === undefined) throw new Error('there is a code')
  await choosePictures(birch.page, [first])
  await expect(birch.page.getByRole('status').filter({ hasText: `1 of ${pictures.length} read` })).toBeVisible()
  await axeClean(birch.page, 'home', 'some of the codes read')
  await choosePictures(birch.page, rest)
  await scoreNine(birch.page, 10)
  await boardAgrees(birch.page, tappedUpTo(18))

  // Back again, by the same way, to the phone that began.
  const back = await photographed(birch.page)
  await alder.page.goto(`${server.url}/#/`)
  await choosePictures(alder.page, back)
  await expect(chosenKey(alder.page, 'Rowan', fourPlayers[3]?.strokes[17] ?? 0)).toBeVisible()

  await server.start()
  for (const { page } of [alder, birch]) {
    await whenOnServer(page)
    await boardAgrees(page, tappedUpTo(18))
    const settled = await settleDownload(page, 'whole')
    settleAgrees(settled, tappedUpTo(18))
    await boardTellsSettled(page, settled)
  }
  noComplaints([alder, birch])
  for (const phone of phones) await phone.close()
  await server.stop()
})
