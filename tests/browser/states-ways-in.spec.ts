import { type Browser, expect, type Page, test } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { axeClean } from './kit/axe.ts'
import { openTab, readInviteLink, tapScore } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { choose, dayThrough, openPrepared } from './kit/prepared.ts'
import { noComplaints, openPhone, type Phone } from './kit/round.ts'
import { openServed } from './kit/served.ts'
import type { ServerProcess } from './kit/server.ts'

/** States of the ways in, of what is a player's own, and of pages that cannot be shown. */

const isOn = (page: Page, name: string) => expect(page.getByRole('heading', { name, level: 1 })).toBeVisible()
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click()
const json = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) })

/** A phone of its own whose page starts with this done to its browser. */
async function openWith(browser: Browser, before: () => void): Promise<Phone> {
  const phone = await openPhone(browser, 'Alder')
  await phone.page.addInitScript(before)
  return phone
}

test('the first page: nothing on the phone, ways in that do not work, a camera, an offer to install', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await expect(page.getByText('No outing on this phone yet.')).toBeVisible()
  await axeClean(page, 'home', 'no outing yet')
  await page.getByRole('textbox', { name: 'Invite link' }).fill('quillmoor')
  await press(page, 'Join')
  await expect(page.getByText('This is not an invite link.')).toBeVisible()
  await axeClean(page, 'home', 'no link of an invite')
  await page.getByLabel('Choose a file').setInputFiles(json('day.json', '{}'))
  await expect(page.getByText('This file cannot be opened:')).toBeVisible()
  await axeClean(page, 'home', 'a file that is none')
  await page.evaluate(() => window.dispatchEvent(new Event('beforeinstallprompt')))
  await expect(page.getByRole('button', { name: 'Install on this phone' })).toBeVisible()
  await axeClean(page, 'home', 'can be installed')
  const codes = page.getByRole('region', { name: 'From another phone' })
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'))
  })
  await codes.getByRole('button').first().click()
  await expect(codes.getByRole('alert')).toBeVisible()
  await axeClean(page, 'home', 'camera refused')
  await codes.getByRole('button').first().click()
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = async () => document.createElement('canvas').captureStream()
  })
  await codes.getByRole('button').first().click()
  await expect(codes.locator('video')).toBeVisible()
  await axeClean(page, 'home', 'camera on')
  noComplaints([phone])
  await server.stop()
})

test('an outing whose scores wait is on the list with what is to send', async ({ browser }) => {
  const { server, page } = await openServed(browser)
  await openFile(page, dayThrough(1), 'Alder')
  await openTab(page, 'Share')
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  await server.kill()
  await press(page, 'Get three words')
  await expect(page.getByText('With no signal use the QR code, or hand over.')).toBeVisible()
  await axeClean(page, 'share', 'no server for three words')
  await openTab(page, 'Hole')
  await tapScore(page, 'Birch', 5)
  await page.goto(`${server.url}/#/`)
  await expect(page.getByText(/\d to send/)).toBeVisible()
  await axeClean(page, 'home', 'an outing with scores to send')
})

test('the first tee: empty, at fault, a tee, one ball of two, every game and its details', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await page.goto(`${server.url}/#/start`)
  await isOn(page, 'Start an outing')
  await axeClean(page, 'start', 'empty')
  await page.getByText('Take it from a friend').click()
  await page.getByLabel('Course from a file or pictures of codes').setInputFiles(json('course.json', '{}'))
  await expect(page.getByRole('region', { name: 'Course', exact: true }).getByRole('status').first()).not.toBeEmpty()
  await axeClean(page, 'start', 'a course file that is none')
  await press(page, 'Start the outing')
  await expect(page.getByText('Not started yet. Nothing is lost:')).toBeVisible()
  await axeClean(page, 'start', 'faults named')
  await press(page, 'Add a tee')
  await page.getByText('Tee 1 lengths', { exact: true }).first().click()
  await axeClean(page, 'start', 'a tee with its lengths')
  await page.getByText('Stableford details').click()
  await axeClean(page, 'start', 'details of a game, ties by countback')
  for (const summary of await page.locator('details.family > summary').all()) await summary.click()
  await axeClean(page, 'start', 'every family of games open')
  await page.getByText('Paste a list of players').click()
  await page.getByRole('textbox', { name: 'One player a line' }).fill('Alder 14\nBirch 7\nCedar 21\nRowan 11')
  await press(page, 'Add 4 players')
  await choose(page, 'What is played', 'one ball of two')
  await expect(page.getByRole('group', { name: 'Partners' })).toBeVisible()
  await axeClean(page, 'start', 'partners with one ball')
  noComplaints([phone])
  await server.stop()
})

test('joining: by words, by a link that leads there, and by links that do not', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, dayThrough(1), 'Alder')
  const link = await readInviteLink(page)
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  const theirs = birch.page
  await theirs.goto(`${server.url}/#/join`)
  await expect(theirs.getByRole('textbox', { name: 'The three words' })).toBeVisible()
  await axeClean(theirs, 'join', 'three words or a link')
  await press(theirs, 'Ask to be let in')
  await expect(theirs.getByText('Three words are needed.')).toBeVisible()
  await axeClean(theirs, 'join', 'words and name missing')

  await theirs.goto(link)
  await expect(theirs.getByRole('group', { name: 'Join as' })).toBeVisible()
  await axeClean(theirs, 'join', 'the outing ahead, its players by name')
  await press(theirs, 'Join the outing')
  await expect(theirs.getByText('Your name is missing.')).toBeVisible()
  await axeClean(theirs, 'join', 'name missing')
  const [at, , log, invite, secret] = link.split(/(?<!\/)\/(?!\/)/).slice(-5)
  expect([at, log, invite, secret].every(Boolean)).toBe(true)
  await theirs.goto(link.replace(`/${invite}/`, '/nosuchinvite/'))
  await expect(theirs.getByRole('alert').filter({ hasText: 'invite' })).toBeVisible()
  await axeClean(theirs, 'join', 'an invite that is not known')
  await holdJoining(server, theirs, link)
  noComplaints([phone, birch])
})

/** The answer of the server is waited for, then there is no server. */
async function holdJoining(server: ServerProcess, page: Page, link: string): Promise<void> {
  let isHeld = true
  await page.route(
    url => url.pathname !== '/',
    route => (isHeld ? undefined : route.fallback()),
  )
  await page.goto(`${server.url}/#/join`)
  await page.goto(link)
  await expect(page.getByText('Asking the server …')).toBeVisible()
  await axeClean(page, 'join', 'looking at the invite')
  isHeld = false
  await page.unrouteAll()
  await server.kill()
  await page.goto(`${server.url}/#/`)
  await page.goto(link)
  await expect(page.getByText('The server cannot be reached. The link stays here')).toBeVisible()
  await axeClean(page, 'join', 'no server for the invite')
}

test('the bag with a wrong figure, with too many clubs, and where the storage does not answer', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await page.goto(`${server.url}/#/bag`)
  await page.getByRole('textbox', { name: 'Driver, carry' }).fill('9')
  await page.getByRole('textbox', { name: '7 iron, carry' }).fill('145')
  await expect(page.getByText(/^From \d+ to \d+$/).first()).toBeVisible()
  await axeClean(page, 'bag', 'a number out of range')
  const put = page.getByRole('combobox', { name: 'Put a club in' })
  const tooMany = page.getByText(/clubs are in\. A round may be started/)
  for (let n = 0; n < 6 && !(await tooMany.isVisible()); n++) {
    const clubs = page.getByRole('textbox', { name: /, carry$/ })
    const before = await clubs.count()
    await put.selectOption({ index: 1 })
    await expect(clubs).toHaveCount(before + 1)
  }
  await expect(tooMany).toBeVisible()
  await axeClean(page, 'bag', 'more clubs than the Rules allow')
  const shut = await openWith(browser, () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('closed', 'InvalidStateError')
    }
  })
  await shut.page.goto(`${server.url}/#/bag`)
  await expect(shut.page.getByText('The storage of this phone does not answer')).toBeVisible()
  await axeClean(shut.page, 'bag', 'no storage')
  noComplaints([phone, shut])
  await server.stop()
})

test('a player’s own pages on a phone that is nobody’s, and a hole without its length', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, dayThrough(0), 'Oak')
  await to('targets')
  await expect(page.getByRole('group', { name: 'Which is yours?' })).toBeVisible()
  await axeClean(page, 'targets', 'whose')
  await to('plan/2/1')
  await expect(page.getByRole('group', { name: 'Which is yours?' })).toBeVisible()
  await axeClean(page, 'plan', 'whose')
  const noTees = { ...dayThrough(0), course: { ...autumnDay.course, tees: [] } }
  const players = autumnDay.players.map(({ id, name, handicap }) => ({ id, name, handicap }))
  const without = await openPrepared(page, server.url, { ...noTees, players })
  await without('plan/2/1')
  await expect(page.getByText('The length of this hole is not in')).toBeVisible()
  await axeClean(page, 'plan', 'no length')
  noComplaints([phone])
  await server.stop()
})

test('pages that cannot be shown: still read, none there, not on this phone, broken', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await page.goto(`${server.url}/#/nowhere`)
  await isOn(page, 'This page does not exist.')
  await axeClean(page, 'nowhere', 'no page')
  await page.goto(`${server.url}/#/o/elsewhere1/hole`)
  await isOn(page, 'This outing is not on this phone.')
  await axeClean(page, 'nowhere', 'no such outing here')
  noComplaints([phone])

  const slow = await openWith(browser, () => {
    const never = { addEventListener: () => undefined, removeEventListener: () => undefined }
    IDBFactory.prototype.open = () => Object.assign(Object.create(IDBOpenDBRequest.prototype), never)
  })
  await slow.page.goto(server.url)
  await expect(slow.page.getByRole('region', { name: 'On this phone' }).getByText('Opening …')).toBeVisible()
  await axeClean(slow.page, 'home', 'reading what this phone holds')
  await slow.page.goto(`${server.url}/#/o/elsewhere1/hole`)
  await expect(slow.page.getByText('Opening …')).toBeVisible()
  await axeClean(slow.page, 'every page', 'being opened')
  noComplaints([slow])

  // A browser that lacks something which the page of the phones calls.
  await openFile(await firstPage(page, server), dayThrough(0), 'Alder')
  await page.evaluate(() => Reflect.deleteProperty(Array.prototype, 'toSorted'))
  await openTab(page, 'Share')
  await isOn(page, 'Something went wrong on this page.')
  await axeClean(page, 'every page', 'broken')
  await server.stop()
})

async function firstPage(page: Page, server: ServerProcess): Promise<Page> {
  await page.goto(`${server.url}/#/`)
  return page
}
