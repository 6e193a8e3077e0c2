import { expect, type Page, test } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { axeClean } from './kit/axe.ts'
import { joinBy, openTab, readInviteLink } from './kit/golfer.ts'
import { choose, dayThrough, inTwoGroups, openPrepared } from './kit/prepared.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { openServed } from './kit/served.ts'

/** States of the pages of whoever runs the outing, and of those that a phone without its rights sees of them. */

const isOn = (page: Page, name: string) =>
  expect(page.getByRole('heading', { name, exact: true, level: 1 })).toBeVisible()
const select = (page: Page, name: string, option: string) => page.getByRole('combobox', { name }).selectOption(option)
const fill = (page: Page, name: string, text: string) => page.getByRole('textbox', { name }).fill(text)

test('games: opened, asked about, a new one, with a fault, none; of several groups', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, dayThrough(2))
  await to('games')
  await page.getByText('Change Stableford', { exact: true }).click()
  await page.getByText('Stableford details').click()
  await axeClean(page, 'games', 'one opened')
  await fill(page, 'Stableford allowance, %', '900')
  await page.getByRole('button', { name: 'Save Stableford' }).click()
  await expect(page.locator('.fault').first()).toBeVisible()
  await axeClean(page, 'games', 'a fault')
  await page.getByRole('button', { name: 'Take away Stableford' }).click()
  await axeClean(page, 'games', 'one asked about')
  await page.getByText(/^Each for themselves: /).click()
  await page.getByRole('checkbox', { name: 'Skins', exact: true }).check()
  await expect(page.getByRole('button', { name: 'Put in Skins' })).toBeVisible()
  await axeClean(page, 'games', 'a new one')

  const none = await openPrepared(page, server.url, { ...dayThrough(0), games: [], main: undefined })
  await none('games')
  await expect(page.getByText('No game yet. Add one below.')).toBeVisible()
  await axeClean(page, 'games', 'none')
  const groups = await openPrepared(page, server.url, inTwoGroups)
  await groups('games')
  await choose(page, 'Games of', 'Group 2')
  await axeClean(page, 'games', 'several groups')
  noComplaints([phone])
  await server.stop()
})

test('a group that everybody has left is listed no more, nor offered; its phone says where its players went', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  const one = await openPrepared(page, server.url, dayThrough(0))
  await one('groups')
  await expect(page.getByRole('region', { name: 'Group 4' })).toBeVisible()
  await axeClean(page, 'groups', 'one group')

  const to = await openPrepared(page, server.url, {
    ...inTwoGroups,
    scores: [{ ball: 'birch', holes: [5, ...Array(17).fill(null)] }],
  })
  await to('share')
  await choose(page, 'Invite', 'to score for Group 2')
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  const birch = await openPhone(browser, 'Birch')
  await birch.page.goto(await page.getByRole('textbox', { name: 'Invite link' }).inputValue())
  await birch.page.getByRole('button', { name: 'Birch', exact: true }).click()
  await expect(birch.page.getByRole('button', { name: 'Birch 4', exact: true })).toBeVisible()

  await to('groups')
  const move = page.getByRole('region', { name: 'Move a player' })
  await move.getByLabel('Who goes on with another group').selectOption({ label: 'Birch' })
  await move.getByRole('button', { name: 'Move Birch to Group 1' }).click()
  await move.getByRole('button', { name: 'Yes, move' }).click()
  await expect(page.getByRole('region', { name: 'Group 1' })).toContainText('Birch')
  await expect(page.getByRole('region', { name: 'Group 2' })).toHaveCount(0)
  await expect(move).toHaveCount(0)
  await expect(page.getByLabel('Where they play').getByRole('option')).not.toContainText(['Group 2'])
  await axeClean(page, 'groups', 'everybody has left a group')
  await to('share')
  await expect(page.getByRole('radio', { name: 'to score for Group 1' })).toBeAttached()
  await expect(page.getByRole('radio', { name: 'to score for Group 2' })).toHaveCount(0)
  await to('games')
  await expect(page.getByRole('radio', { name: 'Group 1' })).toBeAttached()
  await expect(page.getByRole('radio', { name: 'Group 2' })).toHaveCount(0)
  // The hole that it played counts still.
  await to('board')
  await expect(page.getByRole('listitem').filter({ hasText: 'Birch' })).toContainText('through 1')
  await birch.page.goto(birch.page.url().replace(/hole.*/, 'hole'))
  await expect(birch.page.getByText('Everybody in this group has gone on with another.')).toBeVisible()
  await axeClean(birch.page, 'hole', 'everybody has left the group')
  noComplaints([phone, birch])
  await server.stop()
})

test('corrections with a fault', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, dayThrough(2))
  await to('mend')
  await page.getByRole('region', { name: 'Players' }).getByText('Birch', { exact: true }).click()
  await fill(page, 'Player 2 name', 'Alder')
  await page.getByRole('button', { name: 'Correct Birch' }).click()
  await expect(page.getByText(/name stands twice/)).toBeVisible()
  await axeClean(page, 'mend', 'a player with a fault')
  noComplaints([phone])
  await server.stop()
})

/** What happened, in the words of the list, and what is typed of it until the Rules propose something. */
const situations = {
  'hole-score': ['a wrong score on a hole was returned', { 'Score made': '6' }],
  'card-handicap': ['a wrong handicap was on the card', { 'Correct handicap': '12' }],
  'match-handicap': [
    'a wrong handicap was declared in a match',
    { 'Handicap declared': '12', 'Correct handicap': '10' },
  ],
  certification: ['the card was not certified', {}],
  start: ['a start at the wrong time', { 'Minutes late; early with a minus': '3' }],
  unfinished: ['no partner finished a four-ball hole', {}],
  'late-partner': ['a partner came late to a four-ball', {}],
  'traded-holes': ['sides agreed to give each other holes', {}],
  'written-sum': ['a total on the card was wrong', {}],
} as const

const kinds = {
  penalty: 'penalty',
  disqualified: 'disqualified',
  'plays-off': 'plays off, in a match',
  'net-off': 'net score off',
} as const

test('rulings: what the Rules propose of every situation, every kind, faults, made and taken back', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, autumnDay)
  await to('rulings')
  await expect(page.getByText('No ruling in this outing.')).toBeVisible()
  await axeClean(page, 'rulings', 'none yet')
  for (const [situation, [what, typed]] of Object.entries(situations)) {
    await select(page, 'What happened', what)
    for (const [name, text] of Object.entries(typed)) await fill(page, name, text)
    if (situation === 'late-partner') {
      await select(page, 'Who came late', 'Rowan')
      await select(page, 'Hole in play', '2')
    }
    if (situation === 'written-sum') {
      await select(page, 'Whose card', 'Alder')
      await fill(page, 'Total written', '89')
    }
    await expect(page.getByRole('button', { name: 'Take it into the ruling' })).toBeVisible()
    await axeClean(page, 'rulings', situation as keyof typeof situations)
  }
  for (const [kind, words] of Object.entries(kinds)) {
    await choose(page, 'What is ruled', words)
    await axeClean(page, 'rulings', kind as keyof typeof kinds)
  }
  await page.getByRole('checkbox', { name: 'in all games' }).uncheck()
  await page.getByRole('button', { name: 'Make this ruling' }).click()
  await expect(page.getByText('Whom it concerns is missing.')).toBeVisible()
  await axeClean(page, 'rulings', 'faults')

  // A late partner may play from a hole on: that stands in the ruling.
  await page.getByRole('checkbox', { name: 'in all games' }).check()
  await select(page, 'What happened', 'a partner came late to a four-ball')
  await select(page, 'Who came late', 'Rowan')
  await select(page, 'Hole in play', '2')
  await page.getByRole('button', { name: 'Take it into the ruling' }).click()
  await expect(page.getByRole('combobox', { name: 'Plays from hole' })).toBeVisible()
  await axeClean(page, 'rulings', 'no-penalty')
  await page.getByRole('button', { name: 'Make this ruling' }).click()
  await expect(page.getByText('Rowan: no penalty').first()).toBeVisible()
  await axeClean(page, 'rulings', 'made')
  await page.getByRole('button', { name: /^Take back: Rowan/ }).click()
  await axeClean(page, 'rulings', 'taken back asked')
  noComplaints([phone])
  await server.stop()
})

test('a phone that only watches, and the pages on which it changes nothing', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await openPrepared(page, server.url, dayThrough(2))
  await readInviteLink(page)
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  await axeClean(page, 'share', 'invite to score')
  await page.evaluate(() => {
    navigator.clipboard.writeText = async () => undefined
  })
  await page.getByRole('button', { name: 'Copy the link' }).click()
  await axeClean(page, 'share', 'invite copied')
  await page
    .getByRole('region', { name: 'No signal? Hand over' })
    .getByRole('button', { name: 'Show the codes' })
    .click()
  await page.getByRole('button', { name: 'Show them in turn' }).click()
  await axeClean(page, 'share', 'codes turning')
  await choose(page, 'Invite', 'to watch only')
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  await axeClean(page, 'share', 'invite to watch')
  const oak = await openPhone(browser, 'Oak')
  await joinBy(oak.page, await page.getByRole('textbox', { name: 'Invite link' }).inputValue(), 'Oak')
  await openTab(oak.page, 'Share')
  await expect(oak.page.getByText('This phone only watches.')).toBeVisible()
  await axeClean(oak.page, 'share', 'only watching')
  await openTab(oak.page, 'Card')
  await isOn(oak.page, 'Card')
  await axeClean(oak.page, 'card', 'only watching')
  const path = new URL(page.url()).hash.replace(/\/share$/, '')
  for (const [screen, title, state] of [
    ['games', 'Games', 'not for this phone'],
    ['groups', 'Groups and players', 'not the desk’s phone'],
    ['mend', 'Corrections', 'not the desk’s phone'],
    ['rulings', 'Rulings', 'not the desk’s phone'],
  ] as const) {
    await oak.page.goto(`${server.url}/${path}/${screen}`)
    await isOn(oak.page, title)
    await axeClean(oak.page, screen, state as never)
  }
  noComplaints([phone, oak])
  await server.stop()
})
