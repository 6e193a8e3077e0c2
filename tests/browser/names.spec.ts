import { readFileSync } from 'node:fs'
import { type Download, expect, type Page, test } from '@playwright/test'
import { plainOutingSchema } from '#shared/plain-outing.ts'
import { notedDay } from '#tests/kit/noted-outing.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'
import { whenOnServer } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { outOfOrder } from './kit/reading-order.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

/** What somebody may call themselves who means no good; none is longer than a name may be. */
const unkind = [
  '<img src=x onerror=window.__ran=1>',
  '"><script>window.__ran=1</script>',
  '=HYPERLINK("https://x.example","x")',
  '＝1+1',
  '@SUM(1;1)|cmd',
  '{{7*7}}$(id)</textarea></title>',
  '__proto__',
  'javascript:window.__ran=1//%3Cb%3E&lt;b',
  'W'.repeat(40),
  `Z${'\u0301\u0316'.repeat(19)}`,
  '-1+constructor',
  '&#60;svg/onload=window.__ran=1&#62;',
]

/** Trees. */
const fromRightToLeft = [
  'אלון',
  'أرز',
  'ארז לבנון',
  'سرو',
  'תאנה',
  'صنوبر',
  'רימון',
  'زيتون',
  'ברוש',
  'نخلة',
  'שקד',
  'توت',
]

/** A day with one or more of everything that can be said beside scores, in other words. */
function dayNamed(names: readonly string[]) {
  let next = 0
  const name = (): string => names[next++ % names.length] ?? ''
  const day = plainWith({ ...notedDay, title: name() })
  const renamed = {
    ...day,
    course: { ...day.course, name: name(), tees: day.course.tees?.map(tee => ({ ...tee, name: name() })) },
    players: day.players.map(player => ({ ...player, name: name() })),
    groups: day.groups.map(group => ({ ...group, name: name() })),
    holesOut: day.holesOut?.map(hole => ({ ...hole, reason: name() })),
    absences: day.absences?.map(absence => ({ ...absence, reason: name() })),
    rulings: day.rulings?.map(ruling => ({ ...ruling, rule: name(), reason: name() })),
    playingConditions: { strokes: 1, reason: name() },
  }
  const parsed = plainOutingSchema.safeParse(renamed)
  expect(parsed.success ? '' : JSON.stringify(parsed.error.issues)).toBe('')
  return renamed
}

const pages = [
  ...['hole', 'hole/1', 'hole/9', 'hole/18', 'reset/1', 'board', 'card', 'share', 'finish', 'games', 'groups'],
  ...['mend', 'rulings', 'targets', 'plan/1/1', 'bag/1/1'],
]

/** Texts that reach beyond the edge of the page, but for what scrolls or says itself that it is cut. */
const cutTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const cut: string[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const range = document.createRange()
      range.selectNodeContents(node)
      const isBeyond = [...range.getClientRects()].some(({ right, width }) => width > 0 && right > innerWidth + 1)
      const isMeant = (element: Element | null): boolean =>
        element !== null &&
        (/auto|scroll/.test(getComputedStyle(element).overflowX) ||
          getComputedStyle(element).textOverflow === 'ellipsis' ||
          element.matches('.hidden, textarea, option') ||
          isMeant(element.parentElement))
      if (isBeyond && !isMeant(node.parentElement)) cut.push(`${node.parentElement?.className}: ${node.textContent}`)
    }
    return cut
  })

/** Goes to every page of the outing with everything on it opened, and looks at each. */
async function tour(page: Page, look: (at: string) => Promise<void>): Promise<void> {
  const log = /#\/o\/([^/]+)/.exec(page.url())?.[1] ?? ''
  const [address = ''] = page.url().split('#')
  for (const at of [...pages.map(path => `/o/${log}/${path}`), '/', '/start']) {
    await page.goto(`${address}#${at}`)
    await expect(page.locator('main, [role=main]').getByRole('heading').first()).toBeAttached()
    await expect(page.getByText('Working', { exact: false })).toHaveCount(0)
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true
    })
    await look(at)
  }
  await page.goto(`${address}#/o/${log}/card`)
}

const namesIn = ({ players }: { readonly players: readonly { readonly name: string }[] }): string[] =>
  players.map(({ name }) => name).sort()

const textOf = async (download: Download): Promise<string> => readFileSync(await download.path(), 'utf8')

async function downloaded(page: Page, name: RegExp | string): Promise<string> {
  const waiting = page.waitForEvent('download')
  await page.getByRole('link', { name }).click()
  return textOf(await waiting)
}

test('whatever people call themselves, nothing of it runs, and the page and its files stay as they are', async ({
  browser,
}) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  const { page } = phone
  // The narrowest phone.
  await page.setViewportSize({ width: 320, height: 700 })
  await page.goto(server.url)
  const day = dayNamed(unkind)
  await openFile(page, day, unkind[0] ?? '')
  await whenOnServer(page)
  const title = await page.title()
  const cut: string[] = []
  await tour(page, async at => {
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media })
      const found = await page.evaluate(() => ({
        ran: Reflect.get(window, '__ran') ?? null,
        polluted: Reflect.get({}, 'polluted') ?? null,
        strange: document.querySelectorAll('img, iframe, script:not([src]), [onerror], [onload], a[href^=javascript]')
          .length,
        isWide: document.documentElement.scrollWidth > document.documentElement.clientWidth,
        title: document.title,
      }))
      expect([at, media, found]).toEqual([at, media, { ran: null, polluted: null, strange: 0, isWide: false, title }])
    }
    await page.emulateMedia({ media: 'screen' })
    cut.push(...(await cutTexts(page)).map(text => `${at}: ${text}`))
  })
  expect(cut).toEqual([])
  const plain = JSON.parse(await downloaded(page, 'Download the outing file, plain')) as typeof day
  expect(namesIn(plain)).toEqual(namesIn(day))
  expect(plain.title).toBe(day.title)
  const whole = JSON.parse(await downloaded(page, 'Download the outing file, whole')) as { ops: string[] }
  expect(JSON.stringify(whole)).toContain('window.__ran=1')
  noComplaints([phone])
  await server.stop()
})

test('a name that is written from right to left moves nothing that stands beside it', async ({ browser }) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  const { page } = phone
  await page.goto(server.url)
  await openFile(page, dayNamed(fromRightToLeft), fromRightToLeft[0] ?? '')
  const wrong: unknown[] = []
  await tour(page, async at => {
    for (const line of await outOfOrder(page)) wrong.push([at.split('/').slice(3).join('/') || at, line])
  })
  expect(wrong).toEqual([])
  // The check can fail.
  await page.evaluate(() => {
    const line = document.createElement('p')
    line.textContent = 'אלון · 5 points'
    document.body.prepend(line)
  })
  expect(await outOfOrder(page)).toEqual(['אלון · 5 points'])
  noComplaints([phone])
  await server.stop()
})

test('what nobody can see is left out of a name as it is typed', async ({ browser }) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  const { page } = phone
  await page.goto(`${server.url}/#/start`)
  const name = page.getByRole('textbox', { name: 'Player 1 name' })
  await name.fill('\u202eAl\u200bder\u202c')
  await expect(name).toHaveValue('Alder')
  await name.fill('אלון')
  expect(await name.evaluate(field => getComputedStyle(field).direction)).toBe('rtl')
  noComplaints([phone])
  await server.stop()
})
