import { expect, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardAgrees, cardAgrees, rowsAgree, settleAgrees, settleDownload, type Tapped } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import {
  chosenKey,
  fourBallAndPoints,
  goToHole,
  joinBy,
  openTab,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { readQr } from './kit/qr.ts'
import { noComplaints, openPhone, type Phone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const sides = [
  ['Alder', 'Cedar'],
  ['Birch', 'Rowan'],
] as const

/** Each phone puts in its own player's score of a hole. */
async function scoreOwn(phones: readonly Phone[], hole: number, card: Record<string, (number | null)[]>) {
  for (const { name, page } of phones) {
    const strokes = fourPlayers.find(player => player.name === name)?.strokes[hole - 1] ?? 0
    await goToHole(page, hole)
    await tapScore(page, name, strokes)
    const own = card[name] ?? []
    own[hole - 1] = strokes
  }
}

test('four phones play eighteen holes: outage, two scores, a killed server, one result everywhere', async ({
  browser,
}) => {
  test.setTimeout(300_000)
  const server = await startServer()
  const phones = await Promise.all(fourPlayers.map(({ name }) => openPhone(browser, name, { hasOutages: true })))
  const [alder, birch, cedar, rowan] = phones as [Phone, Phone, Phone, Phone]
  const card = Object.fromEntries(
    fourPlayers.map(({ name }) => [name, Array.from({ length: 18 }, () => null)]),
  ) as Record<string, (number | null)[]>
  const tapped: Tapped = { players: fourPlayers, sides, card }

  await test.step('one starts, two join by link and one by the QR code on the screen', async () => {
    await alder.page.goto(server.url)
    await startOuting(alder.page, fourBallAndPoints)
    const link = await readInviteLink(alder.page)
    await joinBy(birch.page, link, 'Birch')
    const scanned = await readQr(alder.page.getByRole('img', { name: 'QR code of the invite link' }))
    expect(scanned).toBe(link)
    await joinBy(cedar.page, scanned, 'Cedar')
    await joinBy(rowan.page, link, 'Rowan')
    for (const { page } of phones) expect(page.url()).not.toContain(link.split('/').at(-1))
  })

  await test.step('holes 1 to 4, everybody live', async () => {
    for (const hole of [1, 2, 3, 4]) await scoreOwn(phones, hole, card)
    for (const { page } of phones) await whenOnServer(page)
    for (const { page } of phones) await boardAgrees(page, tapped)
  })

  await test.step('Cedar has no signal for six holes; on the 8th Rowan has none either and both write it down', async () => {
    await cedar.context.setOffline(true)
    for (const hole of [5, 6, 7]) await scoreOwn(phones, hole, card)
    await scoreOwn([alder, birch], 8, card)
    await rowan.context.setOffline(true)
    await scoreOwn([cedar, rowan], 8, card)
    await tapScore(cedar.page, 'Rowan', 7)
    await expect(chosenKey(cedar.page, 'Rowan', 7)).toBeVisible()
    await expect(chosenKey(rowan.page, 'Rowan', 6)).toBeVisible()
    await rowan.context.setOffline(false)
    await whenOnServer(rowan.page)
    for (const hole of [9, 10]) await scoreOwn(phones, hole, card)
    await expect(cedar.page.getByText('7 to send')).toBeVisible()
    await cedar.context.setOffline(false)
    for (const { page } of phones) await whenOnServer(page)
  })

  await test.step('two scores are seen on all four, then one is chosen', async () => {
    for (const { page } of phones) {
      await openTab(page, 'Board')
      await expect(page.getByText('hole 8: two scores').first()).toBeVisible()
    }
    await goToHole(birch.page, 8)
    await expect(birch.page.getByText(/two scores: 6 by Rowan, 7 by Cedar · choose/)).toBeVisible()
    await axeClean(birch.page, 'hole', 'two scores')
    await tapScore(birch.page, 'Rowan', 6)
    for (const { page } of phones) {
      await openTab(page, 'Board')
      await expect(page.getByText('two scores')).toHaveCount(0)
      await boardAgrees(page, tapped)
    }
  })

  await test.step('the server is killed on the 12th and comes back on the 14th', async () => {
    await scoreOwn(phones, 11, card)
    await scoreOwn([alder, birch], 12, card)
    await server.kill()
    await scoreOwn([cedar, rowan], 12, card)
    await scoreOwn(phones, 13, card)
    await expect(alder.page.getByText('1 to send')).toBeVisible()
    await server.start()
    for (const { page } of phones) await whenOnServer(page)
    for (const hole of [14, 15, 16, 17, 18]) await scoreOwn(phones, hole, card)
    for (const { page } of phones) await whenOnServer(page)
  })

  await test.step('the list, each board, each card, the settled file and the rows agree', async () => {
    for (const { page } of phones) {
      await boardAgrees(page, tapped)
      await cardAgrees(page, tapped)
    }
    const settled = await settleDownload(birch.page, 'whole')
    settleAgrees(settled, tapped)
    settleAgrees(await settleDownload(cedar.page, 'plain'), tapped)
    await rowsAgree(server.dataDir, settled, tapped)
  })

  noComplaints(phones)
  await server.stop()
})
