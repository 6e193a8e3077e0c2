import { readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { axeClean } from './kit/axe.ts'
import {
  chosenKey,
  fourBallAndPoints,
  goToHole,
  heldQuestion,
  openTab,
  startOuting,
  tapKey,
  tapScore,
} from './kit/golfer.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

/** Counts every click that reaches the page. */
async function countTaps(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    document.documentElement.dataset.taps = '0'
    window.addEventListener(
      'click',
      () => {
        document.documentElement.dataset.taps = String(Number(document.documentElement.dataset.taps) + 1)
      },
      { capture: true },
    )
  })
  return () => page.evaluate(() => Number(document.documentElement.dataset.taps))
}

const scoreHole = async (page: Page, hole: number): Promise<void> => {
  for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[hole - 1] ?? 0)
}

test('undo is one tap, a score over another at most three', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await startOuting(page, fourBallAndPoints)
  const taps = await countTaps(page)
  await tapScore(page, 'Rowan', 4)
  await tapScore(page, 'Rowan', 5)
  const before = await taps()
  await page.getByRole('button', { name: 'Undo Rowan 5' }).click()
  await expect(chosenKey(page, 'Rowan', 4)).toBeVisible()
  expect((await taps()) - before).toBe(1)
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled()
  const again = await taps()
  await tapScore(page, 'Rowan', 5)
  expect((await taps()) - again).toBeLessThanOrEqual(3)
  noComplaints([phone])
  await server.stop()
})

test('a wet pocket scores nothing: another hole is asked about, a burst is held, a lock is one button', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await startOuting(page, fourBallAndPoints)
  for (const hole of [1, 2]) {
    await goToHole(page, hole)
    await scoreHole(page, hole)
  }

  await test.step('a score for a hole that the group has left is asked about once', async () => {
    await goToHole(page, 1)
    await tapKey(page, 'Alder', 6)
    await expect(heldQuestion(page)).toHaveAccessibleName('Your group is on hole 3. Put in for hole 1: Alder 6?')
    await expect(heldQuestion(page)).toBeFocused()
    await expect(chosenKey(page, 'Alder', 5)).toBeVisible()
    await axeClean(page, 'hole', 'another hole asked about')
    await page.getByRole('button', { name: 'Leave out' }).click()
    await expect(heldQuestion(page)).toHaveCount(0)
    await expect(chosenKey(page, 'Alder', 5)).toBeVisible()
    await tapScore(page, 'Alder', 6)
    await tapKey(page, 'Birch', 5)
    await expect(chosenKey(page, 'Birch', 5)).toBeVisible()
  })

  await test.step('the hole that the group is on, and those behind it, are not asked about', async () => {
    for (const hole of [3, 4, 5]) {
      await goToHole(page, hole)
      await tapKey(page, 'Alder', 5)
      await expect(chosenKey(page, 'Alder', 5)).toBeVisible()
    }
    await goToHole(page, 3)
    await tapKey(page, 'Birch', 5)
    await expect(chosenKey(page, 'Birch', 5)).toBeVisible()
  })

  await test.step('keys that come in a burst are held after the first', async () => {
    await goToHole(page, 4)
    await burst(page, ['Birch 5', 'Cedar 5', 'Rowan 5'])
    await expect(heldQuestion(page)).toHaveAccessibleName('Several keys at once. Held: Cedar 5, Rowan 5. Put them in?')
    await expect(chosenKey(page, 'Birch', 5)).toBeVisible()
    await expect(chosenKey(page, 'Cedar', 5)).toHaveCount(0)
    await axeClean(page, 'hole', 'a burst asked about')
    await page.getByRole('button', { name: 'Leave out' }).click()
    await expect(chosenKey(page, 'Rowan', 5)).toHaveCount(0)
  })

  await test.step('two touches at once are held', async () => {
    await page.evaluate(() => {
      const touch = (pointerId: number) =>
        window.dispatchEvent(new PointerEvent('pointerdown', { pointerId, isPrimary: pointerId === 1 }))
      touch(1)
      touch(2)
    })
    await burst(page, ['Cedar 6'])
    await expect(heldQuestion(page)).toContainText('Held: Cedar 6.')
    await page.getByRole('button', { name: 'Put in' }).click()
    await expect(chosenKey(page, 'Cedar', 6)).toBeVisible()
  })

  await test.step('a locked page takes no touch until its two corners are pressed in turn, by key as well', async () => {
    await page.getByRole('button', { name: 'Lock the page' }).click()
    await expect(page.getByText('Locked. Press 1, then 2.')).toBeVisible()
    await axeClean(page, 'hole', 'locked')
    await page.getByText('Rowan', { exact: true }).first().scrollIntoViewIfNeeded()
    const key = page.locator('button[aria-label="Rowan 5"]')
    await key.click({ force: true })
    await expect(page.locator('button[aria-label="Rowan 5"][aria-pressed="true"]')).toHaveCount(0)
    await expect(page.getByRole('button', { name: '2: unlock' })).toBeDisabled()
    await page.getByRole('button', { name: 'Unlock: 1, then 2 at the foot' }).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByText('Now press 2 at the foot.')).toBeVisible()
    await axeClean(page, 'hole', 'locked, the first corner pressed')
    await page.keyboard.press('Tab')
    await expect(page.getByRole('button', { name: '2: unlock' })).toBeFocused()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('button', { name: 'Lock the page' })).toBeVisible()
    await tapScore(page, 'Rowan', 6)
  })
  noComplaints([phone])
  await server.stop()
})

test('targets and a cue of one’s own: set before the first tee, read at the reset, kept on this phone', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await startOuting(page, fourBallAndPoints)
  await test.step('proposed from the level, moved by a stroke', async () => {
    await page.getByRole('link', { name: 'Your six targets' }).click()
    await page.getByRole('radio', { name: 'Alder' }).check({ force: true })
    await expect(page.getByRole('status', { name: 'Target, First three' })).toHaveText('14')
    await page.getByRole('button', { name: 'First three one more' }).click()
    await page.getByRole('button', { name: 'Second three one less' }).click()
    await page.getByRole('textbox', { name: 'Your cue' }).fill('Middle of every green.')
    await axeClean(page, 'targets', 'proposed')
    await page.getByRole('button', { name: 'To the hole' }).click()
  })

  await test.step('the first three closed in a line, the second with its target and the cue', async () => {
    for (const hole of [1, 2, 3]) {
      await goToHole(page, hole)
      await scoreHole(page, hole)
    }
    await page.getByRole('button', { name: 'Next hole' }).click()
    await expect(page.getByRole('heading', { name: /Fresh three/ })).toBeVisible()
    await expect(page.getByText('First three closed.')).toBeVisible()
    await expect(page.getByText('Middle of every green.')).toBeHidden()
    await axeClean(page, 'reset', 'target and cue behind a tap')
    await page.getByText('Your target and cue').click()
    await expect(page.getByText('First three: 15, target 15. on target')).toBeVisible()
    await expect(page.getByText('12 is your target; 13 keeps your level.')).toBeVisible()
    await expect(page.getByText('“Middle of every green.”')).toBeVisible()
    await axeClean(page, 'reset', 'target and cue open')
    await page.getByRole('link', { name: 'Change target or cue' }).click()
    await expect(page.getByText('begun')).toHaveCount(1)
    await axeClean(page, 'targets', 'begun')
  })

  await test.step('nothing of it leaves the phone', async () => {
    await openTab(page, 'Card')
    const downloading = page.waitForEvent('download')
    await page.getByRole('link', { name: 'Download the outing file, whole' }).click()
    expect(readFileSync(await (await downloading).path(), 'utf8')).not.toContain('Middle of every green')
    await page.reload()
    await openTab(page, 'Hole')
    await page.getByRole('link', { name: 'Your six targets' }).click()
    await expect(page.getByRole('textbox', { name: 'Your cue' })).toHaveValue('Middle of every green.')
  })
  noComplaints([phone])
  await server.stop()
})

test('partners change on the way: one match ends where it stands, the next begins, no score moves', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await startOuting(page, fourBallAndPoints)
  for (const hole of [1, 2, 3]) {
    await goToHole(page, hole)
    await scoreHole(page, hole)
  }
  await page.getByRole('button', { name: 'More on this hole' }).click()
  const section = page.getByRole('region', { name: 'Games from here on' })
  await section.getByRole('radio', { name: 'Four-ball match' }).check({ force: true })
  await section.getByRole('radio', { name: 'Alder & Birch v Cedar & Rowan' }).check({ force: true })
  await section.getByRole('button', { name: 'Change sides from hole 4' }).click()
  await section.getByRole('button', { name: 'Change sides', exact: true }).click()
  await goToHole(page, 4)
  await scoreHole(page, 4)
  await openTab(page, 'Board')
  await expect(page.getByRole('region', { name: 'Four-ball match' })).toHaveCount(2)
  const boards = await page.getByRole('region', { name: 'Four-ball match' }).allInnerTexts()
  expect(boards.filter(text => text.includes('holes 1 to 3'))).toHaveLength(1)
  const begun = boards.find(text => text.includes('holes 4 to 18'))
  expect(begun).toContain('Alder & Birch')
  expect(begun).toContain('14 to play')
  noComplaints([phone])
  await server.stop()
})

/** Touches keys as fast as rain does. */
async function burst(page: Page, names: readonly string[]): Promise<void> {
  const keys = names.map(name => page.getByRole('button', { name, exact: true }))
  const boxes = await Promise.all(keys.map(key => key.boundingBox()))
  for (const box of boxes) if (box) await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
}
