import { expect, type Page, test } from '@playwright/test'
import { quillmoor } from '#tests/kit/quillmoor.ts'
import { settleDownload } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import { goToHole, openTab, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { openServed } from './kit/served.ts'

const comers = [
  ['Birch', 7],
  ['Cedar', 21],
  ['Elm', 3],
  ['Fir', 18],
  ['Hazel', 9],
  ['Juniper', 27],
  ['Larch', 12],
  ['Maple', 16],
  ['Oak', 5],
] as const

const alder = { name: 'Alder', courseHandicap: 14, strokes: [] }

/** The players of each group as the page lists them. */
async function groupsOn(page: Page): Promise<string[][]> {
  const groups: string[][] = []
  for (const region of await page.getByRole('region', { name: /^Group \d+$/ }).all()) {
    const lines = await region.getByRole('listitem').allInnerTexts()
    groups.push(lines.map(line => line.trim().split(/\s+/)[0] ?? ''))
  }
  return groups
}

/** Gross strokes of a player on a hole, any but always the same; on the 3rd, a par 3, Elm holes out in two. */
const strokesOf = (name: string, hole: number): number =>
  name === 'Elm' && hole === 3 ? 2 : (quillmoor.pars[hole - 1] ?? 4) + ((name.length + hole) % 3)

async function scoreHole(page: Page, players: readonly string[], hole: number): Promise<void> {
  await goToHole(page, hole)
  for (const name of players) await tapScore(page, name, strokesOf(name, hole))
}

test('a roll-up of eleven: balls thrown, two groups score alone on phones of their own, one board across', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await startOuting(page, { players: [alder, { ...alder, name: 'Rowan', courseHandicap: 11 }], games: ['Stableford'] })
  await openTab(page, 'Board')
  await page.getByRole('link', { name: 'Groups and players' }).click()
  await page.getByRole('textbox', { name: 'One player a line' }).fill(comers.map(each => each.join(' ')).join('\n'))
  await axeClean(page, 'groups', 'a list to add')
  await page.getByRole('button', { name: 'Add 9 players' }).click()
  await expect(page.getByRole('region', { name: /^Group \d+$/ })).toHaveCount(3)
  // Eleven make a three-ball and two four-balls.
  const before = await groupsOn(page)
  expect(before.map(({ length }) => length)).toEqual([3, 4, 4])
  await page.getByRole('button', { name: 'Throw balls for groups' }).click()
  await page.getByRole('button', { name: 'Yes, throw' }).click()
  // Of some forty million orders the throw gives the same one again to nobody.
  await expect.poll(() => groupsOn(page)).not.toEqual(before)
  const groups = await groupsOn(page)
  expect(groups.map(({ length }) => length)).toEqual([3, 4, 4])
  expect(groups.flat().sort()).toEqual(['Alder', 'Rowan', ...comers.map(([name]) => name)].sort())
  await axeClean(page, 'groups', 'thrown')

  const own = groups.findIndex(group => group.includes('Alder'))
  const other = (own + 1) % groups.length
  const [ours = [], theirs = []] = [groups[own], groups[other]]
  await openTab(page, 'Share')
  await page.getByRole('radio', { name: new RegExp(`Group ${other + 1}\\b`) }).check({ force: true })
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  await axeClean(page, 'share', 'several groups')
  const link = await page.getByRole('textbox', { name: 'Invite link' }).inputValue()
  const second = await openPhone(browser, theirs[0] ?? '')
  await second.page.goto(link)
  await second.page.getByRole('textbox', { name: 'Your name' }).fill(theirs[0] ?? '')
  await second.page.getByRole('button', { name: 'Join the outing' }).click()
  for (const name of theirs) await expect(second.page.getByRole('heading', { name, exact: true })).toBeVisible()

  // Alder's phone goes round with Alder's group, the other with its own; neither has the other's keys.
  for (const hole of [1, 3]) {
    await scoreHole(page, ours, hole)
    await scoreHole(second.page, theirs, hole)
  }
  await expect(page.getByRole('button', { name: new RegExp(`^${theirs[0]} `) })).toHaveCount(0)
  for (const each of [page, second.page]) await whenOnServer(each)

  // What the other group put in comes in batches; the file has what this phone holds.
  await openTab(page, 'Board')
  for (const name of [...ours, ...theirs]) {
    const line = page.getByRole('region', { name: 'Stableford' }).getByRole('listitem').filter({ hasText: name })
    await expect(line).toContainText('through 2')
  }
  const settled = await settleDownload(page, 'whole')
  const points = settled.games.find(({ id }) => id === 'stableford')
  if (points?.kind !== 'total') throw new Error('there are points')
  expect(points.lines).toHaveLength(11)
  for (const each of [page, second.page]) {
    await openTab(each, 'Board')
    const board = each.getByRole('region', { name: 'Stableford' })
    await expect(board.getByRole('listitem')).toHaveCount(11)
    for (const { names, total } of points.lines) {
      const line = board.getByRole('listitem').filter({ hasText: names[0] ?? '' })
      await expect(line).toHaveText(new RegExp(`\\b${total}$`))
    }
    const twos = each.getByRole('region', { name: 'Twos' })
    const isElmIn = [...ours, ...theirs].includes('Elm')
    await expect(twos).toContainText(isElmIn ? 'Elm: 3rd' : 'No two yet.')
  }

  // Somebody comes late: the groups stay, the board has one line more.
  await page.getByRole('link', { name: 'Groups and players' }).click()
  await expect(page.getByText('A score is written: the groups stay as they are.')).toBeVisible()
  await axeClean(page, 'groups', 'somebody has scored')
  await page.getByLabel('Where they play').selectOption({ label: `with Group ${own + 1}` })
  await page.getByRole('textbox', { name: 'One player a line' }).fill('Alder 3')
  await page.getByRole('button', { name: 'Add one player' }).click()
  await expect(page.getByText(/^Line 1, Alder: name stands twice/)).toBeVisible()
  await page.getByRole('textbox', { name: 'One player a line' }).fill('Yew 24')
  await page.getByRole('button', { name: 'Add one player' }).click()
  await expect(page.getByRole('region', { name: `Group ${own + 1}` }).getByText('Yew')).toBeVisible()
  await openTab(second.page, 'Board')
  await expect(second.page.getByRole('region', { name: 'Stableford' }).getByRole('listitem')).toHaveCount(12)

  // One of Alder's group goes on with the others: what was scored stays, and the next hole is theirs to put in.
  const mover = ours.find(name => name !== 'Alder') ?? ''
  const move = page.getByRole('region', { name: 'Move a player' })
  await move.getByLabel('Who goes on with another group').selectOption({ label: mover })
  await move.getByLabel('With which group').selectOption({ label: `Group ${other + 1}` })
  await move.getByLabel('From which hole').selectOption('4')
  await move.getByRole('button', { name: `Move ${mover} to Group ${other + 1}` }).click()
  await expect(move.getByText(`${mover}’s holes 1 to 3 stay with Group ${own + 1}`)).toBeVisible()
  await axeClean(page, 'groups', 'a player to move')
  await move.getByRole('button', { name: 'Yes, move' }).click()
  await expect(page.getByRole('region', { name: `Group ${other + 1}` }).getByText(mover, { exact: true })).toBeVisible()
  await goToHole(second.page, 4)
  await tapScore(second.page, mover, 4)
  await goToHole(page, 4)
  await expect(page.getByRole('button', { name: new RegExp(`^${mover} `) })).toHaveCount(0)
  for (const each of [page, second.page]) {
    await openTab(each, 'Board')
    const line = each.getByRole('region', { name: 'Stableford' }).getByRole('listitem').filter({ hasText: mover })
    await expect(line).toContainText('through 3')
  }
  noComplaints([phone, second])
  await server.stop()
})

test('sixteen are pasted at the start, the balls are thrown, and the page stays quick', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await page.getByRole('link', { name: 'Start an outing' }).click()
  await page.getByRole('textbox', { name: 'Course name' }).fill(quillmoor.name)
  await page.getByRole('button', { name: 'Fill the rest in order' }).click()
  await page.getByText('Paste a list of players').click()
  const names = Array.from({ length: 16 }, (_, place) => `Tree${place + 1} ${place}`)
  await page.getByRole('textbox', { name: 'One player a line' }).fill(names.join('\n'))
  await page.getByRole('button', { name: 'Add 16 players' }).click()
  await expect(page.getByText('groups of 4, 4, 4, 4')).toBeVisible()
  await axeClean(page, 'start', 'sixteen pasted, balls thrown')
  const start = Date.now()
  await page.getByRole('button', { name: /^Skins/ }).click()
  await expect(page.getByRole('region', { name: 'Strokes in Skins' }).getByRole('listitem')).toHaveCount(16)
  expect(Date.now() - start).toBeLessThan(5_000)
  await page.getByRole('button', { name: /^Stableford/ }).click()
  await page.getByRole('button', { name: 'Start the outing' }).click()
  await openTab(page, 'Board')
  await expect(page.getByRole('region', { name: 'Stableford' }).getByRole('listitem')).toHaveCount(16)
  await page.getByRole('link', { name: 'Groups and players' }).click()
  await expect(page.getByRole('region', { name: /^Group \d+$/ })).toHaveCount(4)
  expect((await groupsOn(page)).map(({ length }) => length)).toEqual([4, 4, 4, 4])
  noComplaints([phone])
  await server.stop()
})
