import { expect, type Page, test } from '@playwright/test'
import { dayUpTo } from '../sheets/days.ts'
import { type Look, lookAt } from '../sheets/looks.ts'
import { goTo, goToAddress } from '../sheets/stage.ts'
import { openFile } from './kit/outing-file.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

const screens = [
  'hole/8',
  'reset/2',
  'board',
  'card',
  'share',
  'finish',
  'games',
  'groups',
  'mend',
  'rulings',
  'targets',
]

async function show(page: Page, look: Omit<Look, 'light'>): Promise<void> {
  const session = await page.context().newCDPSession(page)
  await lookAt(page, session, { ...look, light: 'day' })
}

/** How far the page scrolls sideways, px. */
const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)

test('no screen scrolls sideways on the smallest phone with text of twice the size', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await show(page, { width: 320, text: 200 })
  for (const address of ['/', '/start', '/bag', '/join']) {
    await goToAddress(page, address)
    expect([address, await sideways(page)]).toEqual([address, 0])
  }
  await goToAddress(page, '/')
  await openFile(page, dayUpTo(7), 'Alder')
  for (const screen of screens) {
    await goTo(page, screen)
    expect([screen, await sideways(page)]).toEqual([screen, 0])
  }
  noComplaints([phone])
  await server.stop()
})

test('a wide screen has two columns, and one for large text', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, dayUpTo(7), 'Alder')
  await goTo(page, 'hole/8')
  const topOf = async (player: string): Promise<number> =>
    (await page.getByRole('region', { name: player, exact: true }).boundingBox())?.y ?? Number.NaN
  await show(page, { width: 1280, text: 100 })
  expect(await topOf('Birch')).toBe(await topOf('Alder'))
  await show(page, { width: 1280, text: 200 })
  expect(await topOf('Birch')).toBeGreaterThan(await topOf('Alder'))
  await show(page, { width: 390, text: 100 })
  expect(await topOf('Birch')).toBeGreaterThan(await topOf('Alder'))
  noComplaints([phone])
  await server.stop()
})
