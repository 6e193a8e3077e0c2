import { readFileSync } from 'node:fs'
import { expect, test } from '@playwright/test'
import { fourPlayers, quillmoor } from '#tests/kit/quillmoor.ts'
import { axeClean } from './kit/axe.ts'
import { chosenKey, fourBallAndPoints, goToHole, openTab, startOuting, tapScore } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'
import { createFinger } from './kit/taps.ts'

test("last week's game again: at most 8 taps from the list of outings to the first score", async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, fourBallAndPoints)
  await goToHole(page, 1)
  await tapScore(page, 'Alder', 5)
  await page.goto(`${server.url}/#/`)

  const finger = createFinger()
  const again = page.getByRole('button', { name: 'Play again: Quillmoor' })
  await expect(again).toContainText('Alder, Birch, Cedar, Rowan')
  await expect(again).toContainText('Stableford, Four-ball match')
  await axeClean(page, 'home', 'outings, and a game to play again')
  await finger.tap(again)
  await expect(page.getByText('Quillmoor, 18 holes, par 72')).toBeVisible()
  await expect(page.getByText('Cedar Course Handicap 21')).toBeVisible()
  await expect(page.getByText('Alder & Cedar v Birch & Rowan 90 %')).toBeVisible()
  await axeClean(page, 'start', 'filled from a game played before')
  await finger.tap(page.getByRole('button', { name: 'Start the outing' }))
  await finger.tap(page.getByRole('button', { name: 'Birch 4', exact: true }))
  await expect(chosenKey(page, 'Birch', 4)).toBeVisible()
  expect(finger.taps()).toBeLessThanOrEqual(8)
  expect(readFileSync('README.md', 'utf8').replaceAll(/\s+/g, ' ')).toContain(
    `${finger.taps()} taps start last week's game again`,
  )

  // A new outing of its own: nothing of the old one's scores, and the old one is still there.
  await openTab(page, 'Card')
  const first = page.getByRole('row').filter({ has: page.getByRole('link', { name: 'Hole 1', exact: true }) })
  const cells = await first.getByRole('cell').allInnerTexts()
  expect(cells.slice(1).map(text => text.trim())).toEqual(['', '4', '', ''])
  await page.goto(`${server.url}/#/`)
  await expect(page.getByRole('region', { name: 'On this phone' }).getByRole('listitem')).toHaveCount(2)
  await expect(page.getByRole('button', { name: /^Play again/ })).toHaveCount(1)
  noComplaints([alder])
  await server.stop()
})

test('the first course is typed in under 60 taps, and a stroke index used twice is caught at once', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  const finger = createFinger()
  await finger.tap(page.getByRole('link', { name: 'Start an outing' }))
  await finger.type(page.getByRole('textbox', { name: 'Course name' }), quillmoor.name)
  for (const [place, par] of quillmoor.pars.entries()) {
    if (par !== 4) await finger.tap(page.getByRole('button', { name: `Hole ${place + 1} par ${par}`, exact: true }))
  }
  for (const index of quillmoor.indexes) {
    await finger.tap(page.getByRole('button', { name: `Stroke index ${index}`, exact: true }))
  }
  await expect(page.getByText('Every hole has its stroke index.')).toBeVisible()
  expect(finger.taps()).toBeLessThan(60)
  for (const [place, index] of quillmoor.indexes.entries()) {
    await expect(page.getByRole('textbox', { name: `Hole ${place + 1} stroke index`, exact: true })).toHaveValue(
      String(index),
    )
  }

  await page.getByRole('textbox', { name: 'Hole 7 stroke index', exact: true }).fill('15')
  await expect(page.getByText('Stroke index 15 stands at holes 3, 7.')).toBeVisible()
  await expect(page.getByText('No hole has stroke index 5.')).toBeVisible()
  await axeClean(page, 'start', 'an index twice and one unused')
  // A tap on a used one leads back to its hole, the next tap mends it.
  await page.getByRole('textbox', { name: 'Hole 7 stroke index', exact: true }).fill('')
  await page.getByRole('button', { name: 'Stroke index 5', exact: true }).click()
  await expect(page.getByText('stands at holes')).toHaveCount(0)
  noComplaints([alder])
  await server.stop()
})

test('a suggestion is one tap, and says before the start who gets strokes, where and why', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, { players: fourPlayers.slice(0, 3), games: ['Stableford'] })
  await page.goto(`${server.url}/#/`)
  await page.getByRole('button', { name: 'Play again: Quillmoor' }).click()
  const suggested = page.getByRole('group', { name: 'What shall it be?' })
  await expect(suggested.getByRole('button')).toHaveText([
    /^Nine points/,
    /^Split sixes/,
    /^Three-ball match/,
    /^Skins/,
  ])
  await suggested.getByRole('button', { name: /^Nine points/ }).click()
  const strokes = page.getByRole('region', { name: 'Strokes in Nine points' })
  await expect(strokes.getByRole('listitem').filter({ hasText: 'Alder' })).toContainText(
    'Course Handicap 14; 7 more than Birch, the lowest',
  )
  await expect(strokes.getByRole('listitem').filter({ hasText: 'Alder' })).toContainText(
    'one at 1, 2, 5, 7, 11, 14, 17',
  )
  await axeClean(page, 'start', 'strokes of a suggested game')
  await page.getByRole('button', { name: 'Start the outing' }).click()
  await page.getByRole('link', { name: 'Board', exact: true }).click()
  await expect(page.getByRole('region', { name: 'Nine points' })).toBeVisible()
  noComplaints([alder])
  await server.stop()
})

test('a friend gives the course by codes or by file, and it is whole there', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const birch = await openPhone(browser, 'Birch')
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await openTab(alder.page, 'Card')
  await alder.page.getByRole('link', { name: 'Correct course, names or handicaps' }).click()
  const give = alder.page.getByRole('region', { name: 'Give this course to a friend' })
  const downloading = alder.page.waitForEvent('download')
  await give.getByRole('link', { name: 'Course file' }).click()
  const file = await (await downloading).path()
  await give.getByRole('button', { name: 'Show the codes' }).click()
  const code = give.getByRole('img', { name: /^Code 1 of \d$/ })
  await expect(code).toBeVisible()
  const of = Number(/of (\d)/.exec((await code.getAttribute('aria-label')) ?? '')?.[1])
  const pictures: Buffer[] = []
  for (let place = 1; place <= of; place++) {
    pictures.push(await give.getByRole('img', { name: `Code ${place} of ${of}` }).screenshot())
    if (place < of) await give.getByRole('button', { name: 'Next code' }).click()
  }

  const files = pictures.map((buffer, place) => ({ name: `${place}.png`, mimeType: 'image/png', buffer }))
  for (const taken of [files.toReversed(), file]) {
    await birch.page.goto(server.url)
    await birch.page.evaluate(() => localStorage.clear())
    await birch.page.goto(`${server.url}/#/start`)
    await birch.page.reload()
    await birch.page.getByLabel('Course from a file or pictures of codes').setInputFiles(taken)
    await birch.page.getByText('Quillmoor, 18 holes, par 72').click()
    for (const [place, index] of quillmoor.indexes.entries()) {
      const field = birch.page.getByRole('textbox', { name: `Hole ${place + 1} stroke index`, exact: true })
      await expect(field).toHaveValue(String(index))
    }
  }
  noComplaints([alder, birch])
  await server.stop()
})
