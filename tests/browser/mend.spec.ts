import { expect, type Page, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { settleDownload } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import { fourBallAndPoints, goToHole, openTab, startOuting, tapScore } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

async function openMend(page: Page): Promise<void> {
  await openTab(page, 'Card')
  await page.getByRole('link', { name: 'Correct course, names or handicaps' }).click()
  await expect(page.getByRole('heading', { name: 'Corrections', exact: true })).toBeVisible()
}

/** What the board says of the points is what `settle` says, ball by ball; every score as it was tapped. */
async function agrees(page: Page, names: readonly string[]): Promise<Readonly<Record<string, number | null>>> {
  const settled = await settleDownload(page, 'whole')
  for (const [place, card] of settled.cards.entries()) {
    expect(card.name).toBe(names[place])
    expect(card.holes.slice(0, 5).map(({ score }) => score)).toEqual(fourPlayers[place]?.strokes.slice(0, 5))
  }
  const points = settled.games.find(({ id }) => id === 'stableford')
  if (points?.kind !== 'total') throw new Error('there are points')
  const totals = Object.fromEntries(points.lines.map(({ names: [name = ''], total }) => [name, total]))
  await openTab(page, 'Board')
  for (const [name, total] of Object.entries(totals)) {
    const line = page.getByRole('region', { name: 'Stableford' }).getByRole('listitem').filter({ hasText: name })
    await expect(line).toHaveText(new RegExp(`\\b${total}$`))
  }
  return totals
}

test('on the 5th a misprinted index, a par, a handicap, a name and a tee are mended, and no score is touched', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, fourBallAndPoints)
  for (const hole of [1, 2, 3, 4, 5]) {
    await goToHole(page, hole)
    for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[hole - 1] ?? 0)
  }
  const names = fourPlayers.map(({ name }) => name)
  const before = await agrees(page, names)
  // Worked by hand over five holes, Rule 21.1 of the Rules of Golf 2023; at 95 % they have 13, 7, 20 and 10 strokes.
  expect(before).toEqual({ Alder: 8, Birch: 11, Cedar: 8, Rowan: 9 })

  await openMend(page)
  await axeClean(page, 'mend', 'as it stands')
  await page.getByLabel('Which hole').selectOption('5')
  await page.getByRole('textbox', { name: 'Hole 5 stroke index' }).fill('18')
  await expect(page.getByText('Hole 16 has stroke index 18 too.')).toBeVisible()
  await axeClean(page, 'mend', 'an index that another hole has')
  await page.getByRole('button', { name: 'Correct hole 5' }).click()
  await expect(page.getByRole('button', { name: 'Correct hole 5' })).toBeDisabled()
  await page.getByLabel('Which hole').selectOption('16')
  await page.getByRole('textbox', { name: 'Hole 16 stroke index' }).fill('1')
  await page.getByRole('button', { name: 'Correct hole 16' }).click()
  await expect(page.getByRole('button', { name: 'Correct hole 16' })).toBeDisabled()
  // The 5th had index 1: Alder, Birch and Rowan lose their stroke there, Cedar one of two.
  expect(await agrees(page, names)).toEqual({ Alder: 7, Birch: 10, Cedar: 7, Rowan: 8 })

  await openMend(page)
  await page.getByLabel('Which hole').selectOption('5')
  await page.getByRole('group', { name: 'Par' }).getByRole('radio', { name: '5' }).check({ force: true })
  await page.getByRole('button', { name: 'Correct hole 5' }).click()
  await expect(page.getByRole('button', { name: 'Correct hole 5' })).toBeDisabled()
  expect(await agrees(page, names)).toEqual({ Alder: 8, Birch: 11, Cedar: 8, Rowan: 9 })

  await openMend(page)
  const players = page.getByRole('region', { name: 'Players' })
  await players.getByText('Alder Course Handicap 14').click()
  await players.getByRole('textbox', { name: 'Player 1 Course Handicap' }).fill('36')
  await players.getByRole('textbox', { name: 'Player 1 name' }).fill('Elder')
  await players.getByRole('button', { name: 'Correct Alder' }).click()
  await expect(players.getByText('Elder Course Handicap 36')).toBeVisible()
  const mended = await agrees(page, ['Elder', ...names.slice(1)])
  // 95 % of 36 is 34: two strokes everywhere but at indexes 17 and 18.
  expect(mended).toEqual({ Elder: 14, Birch: 11, Cedar: 8, Rowan: 9 })

  await openMend(page)
  await page.getByText('Tees: ratings and lengths').click()
  await page.getByRole('button', { name: 'Add a tee' }).click()
  await page.getByRole('textbox', { name: 'Tee 1 name' }).fill('White')
  await page.getByRole('button', { name: 'Correct the tees' }).click()
  await players.getByText('Birch Course Handicap 7').click()
  await players.getByLabel('Player 2 tee').selectOption('White')
  await players.getByRole('button', { name: 'Correct Birch' }).click()
  await openTab(page, 'Card')
  const history = page.getByRole('region', { name: 'History' })
  for (const line of [
    'Alder corrected Birch’s tee: White',
    'Alder corrected the tee White',
    'Alder corrected Elder’s handicap: Course Handicap 36',
    'Alder corrected a name: Elder',
    'Alder corrected the 5th: par 5, stroke index 18',
    'Alder corrected the 16th: par 3, stroke index 1',
    'Alder corrected the 5th: par 4, stroke index 18',
  ]) {
    await expect(history.getByText(line)).toBeVisible()
  }
  await page.getByRole('button', { name: 'Undo: Alder corrected Birch’s tee: White' }).click()
  await expect(history.getByText('Alder took Birch’s tee away')).toBeVisible()
  expect(await agrees(page, ['Elder', ...names.slice(1)])).toEqual(mended)
  noComplaints([alder])
  await server.stop()
})

/** Everything behind a tap is in sight. */
const openAll = (page: Page): Promise<void> =>
  page.locator('main details').evaluateAll(all => {
    for (const each of all as HTMLDetailsElement[]) each.open = true
  })

test('first tee, mending and groups are free of accessibility faults with everything open', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, fourBallAndPoints)
  await openMend(page)
  await openAll(page)
  await axeClean(page, 'mend', 'tees')
  await page.getByRole('button', { name: 'Show the codes' }).click()
  await expect(page.getByRole('img', { name: /^Code 1/ })).toBeVisible()
  await axeClean(page, 'mend', 'course given by codes')
  await page.goto(`${server.url}/#/`)
  await page.getByRole('button', { name: 'Play again: Quillmoor' }).click()
  await expect(page.getByText('Quillmoor, 18 holes, par 72')).toBeVisible()
  await openAll(page)
  await axeClean(page, 'start', 'course taken, and opened')
  await page.getByRole('textbox', { name: 'One player a line' }).fill('Elm 3\nFir 18\nHazel 9\nOak 5')
  await page.getByRole('button', { name: 'Add 4 players' }).click()
  // The match of four is one of eight now; who was chosen stays so until changed by hand.
  await page.getByText('Four-ball match sides', { exact: true }).click()
  await page.getByRole('combobox', { name: 'Oak' }).selectOption('side 1')
  await page.getByRole('button', { name: 'Start the outing' }).click()
  await expect(page.getByText('Four-ball match: these sides cannot play it.').first()).toBeVisible()
  await axeClean(page, 'start', 'sides of a field by hand')
  await page.getByRole('combobox', { name: 'Alder', exact: true }).selectOption('not in this game')
  await page.getByRole('button', { name: 'Start the outing' }).click()
  await openTab(page, 'Board')
  await expect(page.getByRole('region', { name: 'Four-ball match' })).toContainText('Cedar & Oak')
  await axeClean(page, 'board', 'across groups, with the twos')
  await page.getByRole('link', { name: 'Groups and players' }).click()
  await page.getByRole('button', { name: 'Throw balls for groups' }).click()
  await axeClean(page, 'groups', 'to be thrown again')
  await page.getByRole('textbox', { name: 'One player a line' }).fill('Alder 3')
  await page.getByRole('button', { name: 'Add one player' }).click()
  await expect(page.getByText(/name stands twice/)).toBeVisible()
  await axeClean(page, 'groups', 'a list with faults')
  noComplaints([alder])
  await server.stop()
})
