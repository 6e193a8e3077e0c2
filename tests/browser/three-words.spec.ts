import { readFile } from 'node:fs/promises'
import { type Browser, expect, type Page, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import {
  chosenKey,
  goToHole,
  joinBy,
  openTab,
  readInviteLink,
  startOuting,
  tapScore,
  whenOnServer,
} from './kit/golfer.ts'
import { noComplaints, openPhone, type Phone, whenKept } from './kit/round.ts'
import { type ServerProcess, startServer } from './kit/server.ts'

async function startWith(browser: Browser): Promise<{ server: ServerProcess; alder: Phone; birch: Phone }> {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  await alder.page.goto(server.url)
  await startOuting(alder.page)
  await whenOnServer(alder.page)
  await birch.page.goto(server.url)
  return { server, alder, birch }
}

/** The three words, as somebody reads them from the page to say them. */
async function getWords(page: Page): Promise<string> {
  await openTab(page, 'Share')
  await page.getByRole('button', { name: 'Get three words' }).click()
  const words = page.locator('.three-words')
  await expect(words).toBeVisible()
  return ((await words.textContent()) ?? '').replaceAll(/\s+/g, ' ').trim()
}

async function askBy(page: Page, words: string, name: string): Promise<void> {
  await page.getByRole('textbox', { name: 'The three words' }).fill(words)
  await page.getByRole('textbox', { name: 'Your name' }).fill(name)
  await page.getByRole('button', { name: 'Ask to be let in' }).click()
}

/** As on a network that lets no web socket through. */
const blockSockets = (page: Page) =>
  page.addInitScript(() => {
    window.WebSocket = class {
      onerror: ((event: Event) => void) | null = null
      constructor() {
        setTimeout(() => this.onerror?.(new Event('error')))
      }
      close() {
        this.onerror = null
      }
    } as unknown as typeof WebSocket
  })

const says = (page: Page, text: string) => expect(page.getByRole('alert').filter({ hasText: text })).toBeVisible()

test('three words said across the green let a phone in with one tap', async ({ browser }) => {
  const { server, alder, birch } = await startWith(browser)
  const words = await getWords(alder.page)
  expect(words.split(' ')).toHaveLength(3)
  await expect(alder.page.getByText(/^9 min \d+ s left$/)).toBeVisible()
  await axeClean(alder.page, 'share', 'three words said')

  await birch.page.getByRole('link', { name: 'Join by three words' }).click()
  await askBy(birch.page, 'no such words', 'Birch')
  await says(birch.page, 'No such words now')
  await axeClean(birch.page, 'join', 'no such words')
  await askBy(birch.page, words.toUpperCase().replaceAll(' ', ' - '), 'Birch')
  await expect(birch.page.getByRole('status').filter({ hasText: 'Asked' })).toBeVisible()
  await axeClean(birch.page, 'join', 'asked and waiting')

  // Any page of the outing shows it.
  await openTab(alder.page, 'Board')
  await expect(alder.page.getByText('Birch asks to be let in')).toBeVisible()
  await axeClean(alder.page, 'every page of an outing', 'somebody asks to be let in')
  await alder.page.getByRole('button', { name: 'Not now, Birch' }).click()
  await expect(alder.page.getByText('Birch asks to be let in')).toBeHidden()
  await says(birch.page, 'Not now, they say')
  await axeClean(birch.page, 'join', 'not now, they say')

  await askBy(birch.page, words, 'Birch')
  await alder.page.getByRole('button', { name: 'Let Birch in' }).click()
  await expect(birch.page.getByRole('heading', { name: 'Alder' })).toBeVisible()
  await expect(alder.page.getByText('Birch asks to be let in')).toBeHidden()
  await goToHole(birch.page, 1)
  await tapScore(birch.page, 'Rowan', 5)
  await whenOnServer(birch.page)
  await goToHole(alder.page, 1)
  await expect(chosenKey(alder.page, 'Rowan', 5)).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})

test('a server that starts again has forgotten words and request, and both phones say so', async ({ browser }) => {
  const { server, alder, birch } = await startWith(browser)
  const words = await getWords(alder.page)
  await birch.page.getByRole('link', { name: 'Join by three words' }).click()
  await askBy(birch.page, words, 'Birch')
  await expect(alder.page.getByText('Birch asks to be let in')).toBeVisible()
  await server.kill()
  await expect(birch.page.getByRole('status').filter({ hasText: 'Still asking' })).toBeVisible()
  await axeClean(birch.page, 'join', 'asked, no server')
  await server.start()
  await says(birch.page, 'This request is over')
  await says(alder.page, 'has forgotten these words')
  await axeClean(birch.page, 'join', 'the request is over')
  await axeClean(alder.page, 'share', 'three words forgotten')
  await expect(alder.page.getByText('Birch asks to be let in')).toBeHidden()

  await alder.page.getByRole('button', { name: 'Get three new words' }).click()
  const words2 = alder.page.locator('.three-words')
  await expect(words2).toBeVisible()
  await askBy(birch.page, (await words2.textContent()) ?? '', 'Maple')
  await alder.page.getByRole('button', { name: 'Let Maple in' }).click()
  // A name that no player has: the page asks whose it is.
  await expect(birch.page.getByText('Are you one of these?')).toBeVisible()
  await axeClean(birch.page, 'join', 'let in, and who are you')
  await birch.page.getByRole('button', { name: 'Rowan' }).click()
  await expect(birch.page.getByRole('heading', { name: 'Rowan' })).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})

test('where web sockets are blocked the words work all the same', async ({ browser }) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  await blockSockets(alder.page)
  await alder.page.goto(server.url)
  await startOuting(alder.page)
  await whenOnServer(alder.page)
  const words = await getWords(alder.page)
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  await birch.page.goto(`${server.url}/#/join`)
  await askBy(birch.page, words, 'Birch')
  await alder.page.getByRole('button', { name: 'Let Birch in' }).click()
  await expect(birch.page.getByRole('heading', { name: 'Alder' })).toBeVisible()
  await server.stop()
})

test('a phone that is taken out says so, keeps what it has not sent, and its player goes on by joining again', async ({
  browser,
}) => {
  const { server, alder, birch } = await startWith(browser)
  const link = await readInviteLink(alder.page)
  await joinBy(birch.page, link, 'Birch')
  await whenOnServer(birch.page)
  await whenKept(birch.page)
  await birch.context.setOffline(true)
  await goToHole(birch.page, 1)
  await tapScore(birch.page, 'Rowan', 6)
  await alder.page.getByRole('button', { name: 'Take Birch out' }).click()
  await axeClean(alder.page, 'share', 'a phone asked about')
  await alder.page.getByRole('button', { name: 'Take it out' }).click()
  await expect(alder.page.getByRole('button', { name: 'Let Birch in again' })).toBeVisible()
  await axeClean(alder.page, 'share', 'a phone taken out')
  await whenOnServer(alder.page)

  await birch.context.setOffline(false)
  await expect(birch.page.getByText('The desk took this phone out.', { exact: false }).first()).toBeVisible()
  await axeClean(birch.page, 'every page of an outing', 'the desk took this phone out')
  await openTab(birch.page, 'Share')
  await says(birch.page, 'This phone is no longer in')
  await expect(birch.page.getByText('1 to send')).toBeVisible()
  await axeClean(birch.page, 'share', 'this phone taken out')

  // Its player is let in anew, by words: what it had not sent goes up.
  const words = await getWords(alder.page)
  await birch.page.getByRole('link', { name: 'Join again' }).click()
  await askBy(birch.page, words, 'Birch')
  await alder.page.getByRole('button', { name: 'Let Birch in', exact: true }).click()
  await expect(birch.page.getByRole('heading', { name: 'Rowan' })).toBeVisible()
  await whenOnServer(birch.page)
  await goToHole(alder.page, 1)
  await expect(chosenKey(alder.page, 'Rowan', 6)).toBeVisible()
  noComplaints([alder, birch])
  await server.stop()
})

test('an invite that is stopped lets nobody else in, says so, and leaves in who came by it', async ({ browser }) => {
  const { server, alder, birch } = await startWith(browser)
  const link = await readInviteLink(alder.page)
  await joinBy(birch.page, link, 'Birch')
  await whenOnServer(birch.page)
  const invites = alder.page.getByRole('region', { name: 'Invites given' })
  const toScore = invites.getByRole('group', { name: /^to score/ })
  await expect(toScore).toContainText('1 came by it: Birch')
  // With no signal, and by the keyboard alone.
  await alder.context.setOffline(true)
  await toScore.getByRole('button', { name: 'Stop this invite' }).focus()
  await alder.page.keyboard.press('Enter')
  await expect(toScore).toContainText('Still in by it: Birch.')
  await axeClean(alder.page, 'share', 'an invite asked about')
  await alder.page.keyboard.press('Enter')
  await invites.getByText('Stopped: 1').click()
  const again = invites.getByRole('button', { name: 'Let phones in by it again' })
  await expect(again).toBeVisible()
  await axeClean(alder.page, 'share', 'an invite stopped')
  await alder.context.setOffline(false)
  await whenOnServer(alder.page)
  await expect(alder.page.getByRole('textbox', { name: 'Invite link' })).not.toHaveValue(link)

  const cedar = await openPhone(browser, 'Cedar')
  await cedar.page.goto(link)
  await says(cedar.page, 'This invite is no longer good. Ask for a new one.')
  await axeClean(cedar.page, 'join', 'an invite that was stopped')
  await goToHole(birch.page, 1)
  await tapScore(birch.page, 'Rowan', 6)
  await whenOnServer(birch.page)

  await again.click()
  await expect(again).toHaveCount(0)
  await whenOnServer(alder.page)
  await cedar.page.goto('about:blank')
  await cedar.page.goto(link)
  await expect(cedar.page.getByRole('button', { name: 'Join the outing' })).toBeVisible()
  noComplaints([alder, birch, cedar])
  await server.stop()
})

test('what a phone taken out had not sent goes on by way of another phone', async ({ browser }) => {
  const { server, alder, birch } = await startWith(browser)
  const link = await readInviteLink(alder.page)
  await joinBy(birch.page, link, 'Birch')
  await whenOnServer(birch.page)
  await whenKept(birch.page)
  await birch.context.setOffline(true)
  await goToHole(birch.page, 2)
  await tapScore(birch.page, 'Cedar', 4)
  await alder.page.getByRole('button', { name: 'Take Birch out' }).click()
  await alder.page.getByRole('button', { name: 'Take it out' }).click()
  await whenOnServer(alder.page)
  await birch.context.setOffline(false)
  await openTab(birch.page, 'Share')
  await says(birch.page, 'This phone is no longer in')
  const downloading = birch.page.waitForEvent('download')
  await birch.page.getByRole('button', { name: 'Save as a file' }).click()
  const file = await (await downloading).path()
  await alder.page.goto(`${server.url}/#/`)
  await alder.page
    .getByLabel('Choose pictures of the codes, or the file')
    .setInputFiles({ name: 'hand-over.json', mimeType: 'application/json', buffer: await readFile(file) })
  await goToHole(alder.page, 2)
  await expect(chosenKey(alder.page, 'Cedar', 4)).toBeVisible()
  await whenOnServer(alder.page)
  await server.stop()
})

test('another player goes on with the phone, and what was put in before stays under the name that it had', async ({
  browser,
}) => {
  const { server, alder } = await startWith(browser)
  await goToHole(alder.page, 1)
  await tapScore(alder.page, 'Rowan', 5)
  await openTab(alder.page, 'Share')
  await alder.page.getByRole('button', { name: 'Another player has it now' }).click()
  await axeClean(alder.page, 'share', 'another player has the phone')
  await alder.page.getByRole('button', { name: 'Cedar', exact: true }).click()
  await expect(alder.page.getByText('This phone is Cedar’s.')).toBeVisible()
  await goToHole(alder.page, 1)
  await tapScore(alder.page, 'Rowan', 6)
  await openTab(alder.page, 'Card')
  const history = alder.page.getByRole('region', { name: 'History' })
  await expect(history).toContainText('Cedar changed Rowan’s 1st from 5 to 6')
  await expect(history).toContainText('phone is now Cedar’s')
  await expect(history).not.toContainText('Cedar put in 5')
  await server.stop()
})
