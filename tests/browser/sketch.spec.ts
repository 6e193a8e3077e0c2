import { expect, type Page, test } from '@playwright/test'
import { plainWith } from '#tests/kit/plain-outing.ts'
import { axeClean } from './kit/axe.ts'
import { goToHole, joinBy, openTab, readInviteLink, whenOnServer } from './kit/golfer.ts'
import { pressOn, tabTo } from './kit/keyboard.ts'
import { openFile } from './kit/outing-file.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { openServed } from './kit/served.ts'
import { createFinger } from './kit/taps.ts'

const file = plainWith({ scores: [] })

/** Every thing that a hole usually has is in after so many taps at most. */
const mostTaps = 20

const key = (page: Page, name: string) => page.getByRole('button', { name, exact: true })
const figure = (page: Page, group: string, amount: number) =>
  page.getByRole('group', { name: group, exact: true }).getByRole('button', { name: String(amount), exact: true })
const drawn = (page: Page) => page.getByRole('region', { name: 'What is drawn' }).getByRole('listitem')
const title = (page: Page, hole: number) => page.getByRole('heading', { name: `Sketch of hole ${hole}`, exact: true })

const usualHole = [
  'Bunker left of the green: 3 from its edge, 12 wide, 15 long',
  'Bunker right of the green: 3 from its edge, 8 wide, 15 long',
  'Fairway: from 130 to 330 off the tee, 30 wide',
  'Trees left of the line: from 110 to 260 off the tee, 15 off the line, 40 wide',
  'Water right of the line: from 220 to 300 off the tee, 25 off the line, 20 wide',
]

/** The first of Quillmoor, 378 yards, as a player with the card in hand puts it in. */
async function drawUsualHole(page: Page): Promise<number> {
  const finger = createFinger()
  const put = async (...names: readonly string[]): Promise<void> => {
    for (const name of names) await finger.tap(key(page, name))
  }
  await finger.tap(figure(page, 'Width, yards', 24))
  await finger.tap(figure(page, 'Depth, yards', 32))
  await put('Bunker', 'left of the green')
  await finger.tap(figure(page, 'How wide', 12))
  await put('Bunker', 'right of the green')
  await put('Fairway')
  await finger.tap(figure(page, 'How wide', 30))
  await put('Trees', 'left of the line')
  await finger.tap(figure(page, 'From the line', 15))
  await put('Water', 'right of the line')
  await finger.tap(figure(page, 'From the tee to where it begins', 220))
  await finger.tap(figure(page, 'How wide', 20))
  for (const [place, line] of usualHole.entries()) await expect(drawn(page).nth(place)).toContainText(line)
  return finger.taps()
}

test('a usual hole is drawn in at most twenty taps, stays after a reload and reaches the other phone', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, file, 'Alder')
  await page.getByRole('link', { name: 'Your plan' }).click()
  await page.getByRole('link', { name: 'Sketch of the hole' }).click()
  await expect(title(page, 1)).toBeVisible()
  await expect(
    page.getByText('A green of usual size is drawn: 26 wide, 28 deep, until its own size is put in.'),
  ).toBeVisible()
  await axeClean(page, 'sketch', 'nothing drawn')

  const taps = await drawUsualHole(page)
  test.info().annotations.push({ type: 'taps to draw a usual hole', description: String(taps) })
  expect(taps).toBeLessThanOrEqual(mostTaps)
  // A third of 32 is between 10 and 11.
  await expect(page.getByText('A front pin lies about 11 short of the middle')).toBeVisible()
  await expect(
    page.getByRole('img', { name: /^Hole 1 as drawn.*Green: 24 wide, 32 deep, in yards\. Bunker left/ }),
  ).toBeVisible()
  await axeClean(page, 'sketch', 'a shape opened')

  await test.step('one change is taken back, or a shape away', async () => {
    await figure(page, 'How wide', 80).click()
    await expect(drawn(page).nth(4)).toContainText('80 wide')
    await key(page, 'Undo the last change').click()
    await expect(drawn(page).nth(4)).toContainText('20 wide')
    await expect(key(page, 'Undo the last change')).toBeDisabled()
    await key(page, 'Out of bounds').click()
    await axeClean(page, 'sketch', 'asked where')
    await key(page, 'left of the line').click()
    await expect(page.getByText('Six shapes are in: the most that is used.')).toBeVisible()
    await axeClean(page, 'sketch', 'six shapes')
    await key(page, 'Take it away').click()
    await expect(drawn(page)).toHaveCount(5)
  })

  await test.step('it stays, and who joins sees it; both can draw without meaning each other', async () => {
    const path = new URL(page.url()).hash
    await page.reload()
    await expect(drawn(page)).toHaveCount(5)
    const birch = await openPhone(browser, 'Birch')
    await joinBy(birch.page, await readInviteLink(page), 'Birch')
    await birch.page.goto(`${server.url}/${path}`)
    await expect(drawn(birch.page)).toHaveCount(5)
    await page.goto(`${server.url}/${path}`)
    await key(birch.page, 'Bunker').click()
    await key(birch.page, 'over the green').click()
    await expect(drawn(page).nth(5)).toContainText('Bunker over the green')
    await figure(page, 'Width, yards', 20).click()
    await expect(figure(birch.page, 'Width, yards', 20)).toHaveAttribute('aria-pressed', 'true')
    await whenOnServer(page)
    noComplaints([birch])
  })

  await test.step('the history says what was drawn, the course goes on with it, the code without', async () => {
    await openTab(page, 'Card')
    await expect(page.getByText('Birch drew on hole 1: Bunker over the green')).toBeVisible()
    await page.getByRole('link', { name: 'Correct course, names or handicaps' }).click()
    await expect(page.getByText('Drawn: 1 of 18.')).toBeVisible()
    await page.getByRole('button', { name: 'Show the codes' }).click()
    await expect(page.getByText('The code leaves the sketches of the holes out')).toBeVisible()
    await expect(page.getByText('Code 1 of 1')).toBeVisible()
    await axeClean(page, 'mend', 'sketches left out of the codes')
    await page.goto(`${server.url}/#/`)
    await page.getByRole('button', { name: /^Play again/ }).click()
    await page.getByRole('button', { name: 'Start the outing' }).click()
    await goToHole(page, 1)
    await page.getByRole('link', { name: 'Your plan' }).click()
    await page.getByRole('link', { name: 'Sketch of the hole' }).click()
    await expect(drawn(page)).toHaveCount(6)
  })
  noComplaints([phone])
  await server.stop()
})

test('by the keyboard alone, on a hole without a length, and read on a phone that only watches', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(
    page,
    { ...file, course: { ...file.course, tees: [] }, players: file.players.map(({ tee: _, ...each }) => each) },
    'Alder',
  )
  const path = new URL(page.url()).hash.replace(/hole.*$/, 'sketch/3')
  await page.goto(`${server.url}/${path}`)
  await expect(title(page, 3)).toBeVisible()
  await pressOn(page, figure(page, 'Width, yards', 20))
  await pressOn(page, key(page, 'Water'))
  await expect(page.getByRole('group', { name: 'Where: Water' })).toBeFocused()
  await pressOn(page, key(page, 'across the line'))
  await expect(page.getByRole('group', { name: 'Water across the line' })).toBeFocused()
  await pressOn(page, figure(page, 'From the middle of the green back to it', 40))
  await expect(drawn(page)).toContainText('Water across the line: 40 to 60 from the middle of the green, 80 wide')
  await expect(page.getByText('The length of this hole is not in')).toBeVisible()
  await tabTo(page, key(page, 'Take it away'))
  await axeClean(page, 'sketch', 'no length')
  await pressOn(page, key(page, 'Undo the last change'))
  await expect(drawn(page)).toContainText('60 to 80 from the middle of the green')

  await whenOnServer(page)
  await openTab(page, 'Share')
  await page.getByRole('group', { name: 'Invite' }).getByRole('radio', { name: 'to watch only' }).check({ force: true })
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  const oak = await openPhone(browser, 'Oak')
  await joinBy(oak.page, await page.getByRole('textbox', { name: 'Invite link' }).inputValue(), 'Oak')
  await oak.page.goto(`${server.url}/${path}`)
  await expect(drawn(oak.page)).toContainText('Water across the line')
  await expect(oak.page.getByText('the desk draws; you see what is drawn.')).toBeVisible()
  await expect(key(oak.page, 'Bunker')).toHaveCount(0)
  await axeClean(oak.page, 'sketch', 'not the desk’s phone')
  noComplaints([phone, oak])
  await server.stop()
})
