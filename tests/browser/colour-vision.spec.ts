import { expect, type Locator, type Page, test } from '@playwright/test'
import { type Deficiency, deficiencies } from '#tests/kit/colour-vision.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'
import { chosenKey, foot, goToHole, openTab, tapScore, whenOnServer } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { alike, hueOf, type Picture, pictureOf, pictureOfPart, seeWith } from './kit/pictures.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

/** Every state of the strip on a hole of its own, by Alder, off no strokes. */
const marks = {
  level: 1,
  'one over': 2,
  'two over': 3,
  'six over': 4,
  'one under': 5,
  'two under': 6,
  'picked up': 7,
  'two scores': 8,
  'out of play': 9,
  'not played': 10,
} as const
const alder = [4, 6, 5, 10, 3, 1, 'picked-up', 5, null]
/** With Cedar's the side's; the two scores of the 8th win or halve the hole. */
const others = {
  birch: [5, 5, 5, 4, 4, 3, 4, 6, null],
  cedar: [5, 6, 5, 4, 5, 3, 5, 7, null],
  rowan: [5, 7, 6, 5, 5, 4, 6, 7, null],
}
const matchMarks = { 'won above': 1, 'won below': 2, halved: 3, 'won or halved': 8, 'not decided': 10 } as const

const upTo = (holes: readonly unknown[]): readonly unknown[] =>
  Array.from({ length: 18 }, (_, place) => holes[place] ?? null)

const dayOfMarks = plainWith({
  rules: false,
  players: ['Alder', 'Birch', 'Cedar', 'Rowan'].map(name => ({
    id: name.toLowerCase(),
    name,
    handicap: { strokes: 0 },
  })),
  holesOut: [{ hole: 9, counts: 'nothing' }],
  markers: [{ ball: 'alder', marker: 'birch' }],
  scores: [
    { ball: 'alder', holes: upTo(alder) },
    { ball: 'alder', record: 'marker', holes: upTo(alder.map((_, place) => (place === 7 ? 6 : null))) },
    ...Object.entries(others).map(([ball, holes]) => ({ ball, holes: upTo(holes) })),
  ],
})

/** Off their usual handicaps, so that each has strokes of its own on the 2nd. */
const dayOfStrokes = plainWith({ rules: false, scores: [] })

/** Of a mark's cell; the thinnest mark, a dash, has four in a hundred. */
const markShare = 0.01
/** Of a key; a key that is chosen is turned over altogether. */
const keyShare = 0.05

/** The cell of each hole in a strip of six equal blocks. */
async function cellsOf(
  page: Page,
  strip: string,
  holes: Readonly<Record<string, number>>,
): Promise<Map<string, Picture>> {
  const cells = new Map<string, Picture>()
  for (const [name, hole] of Object.entries(holes)) {
    const block = page
      .locator(`${strip} >> nth=0`)
      .locator('.strip-block > svg')
      .nth(Math.floor((hole - 1) / 3))
    cells.set(name, await pictureOfPart(block, { from: ((hole - 1) % 3) / 3, width: 1 / 3 }))
  }
  return cells
}

/** The square before the words at the foot: 12 px wide. */
async function squareOf(word: Locator): Promise<Picture> {
  const box = await word.boundingBox()
  return pictureOfPart(word, { from: 0, width: 12 / (box?.width ?? 12) })
}

/** Every pair of states that the board draws and that no eye with this deficiency tells apart. */
async function alikeOnBoard(page: Page): Promise<readonly string[]> {
  await openTab(page, 'Board')
  const line = page.getByRole('region', { name: 'Stableford' }).getByRole('listitem').filter({ hasText: 'Alder' })
  await expect(line).toContainText('two scores')
  const strip = await cellsOf(page, '[role=img][aria-label^="Strip of Alder"]', marks)
  const match = await cellsOf(page, '.match .strip', matchMarks)
  return [...alike(strip, markShare), ...alike(match, markShare)]
}

/** The bars of the keys, and one key at rest, chosen, and as one of two scores. */
async function alikeOnHole(page: Page): Promise<readonly string[]> {
  const key = (name: string) => page.getByRole('button', { name, exact: true })
  await goToHole(page, 10)
  const bars = new Map<string, Picture>()
  for (const [name, score] of Object.entries({ 'two under': 2, 'one under': 3, level: 4, over: 5, 'two over': 6 })) {
    bars.set(name, await pictureOf(key(`Birch ${score}`).locator('> svg')))
  }
  await goToHole(page, 8)
  const keys = new Map([
    ['at rest', await pictureOf(key('Rowan 6'))],
    ['chosen', await pictureOf(chosenKey(page, 'Birch', 6))],
    ['one of two', await pictureOf(key('Alder 6'))],
  ])
  return [...alike(bars, markShare), ...alike(keys, keyShare)]
}

/** Tabs and choices, chosen and not, with the same words on them. */
async function alikeKeysOfThePage(page: Page): Promise<readonly string[]> {
  const tab = page.getByRole('link', { name: 'Card', exact: true })
  const choice = page.locator('label').filter({ hasText: /^Four-ball match$/ })
  await openTab(page, 'Board')
  const tabs = new Map([['tab at rest', await pictureOf(tab)]])
  const choices = new Map([['choice at rest', await pictureOf(choice)]])
  await choice.click()
  choices.set('choice made', await pictureOf(choice))
  await openTab(page, 'Card')
  tabs.set('tab shown', await pictureOf(tab))
  return [...alike(tabs, keyShare), ...alike(choices, keyShare)]
}

const everythingAlike = async (page: Page): Promise<readonly string[]> => [
  ...(await alikeOnBoard(page)),
  ...(await alikeOnHole(page)),
  ...(await alikeKeysOfThePage(page)),
]

for (const colorScheme of ['light', 'dark'] as const) {
  test(`no two states differ by hue alone, ${colorScheme}: strip, match, keys, tabs, choices`, async ({ browser }) => {
    const { server, phone, page } = await openServed(browser)
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' })
    await openFile(page, dayOfMarks, 'Alder')
    for (const deficiency of Object.keys(deficiencies) as Deficiency[]) {
      await seeWith(page, deficiency)
      expect(await everythingAlike(page), deficiency).toEqual([])
    }
    noComplaints([phone])
    await server.stop()
  })
}

test('strokes, the foot, faults and two scores say it in marks and words as well, to eyes that see no colour', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await page.emulateMedia({ reducedMotion: 'reduce' })
  await seeWith(page, 'achromatopsia')

  await page.getByRole('link', { name: 'Start an outing' }).click()
  const name = page.locator('.field').filter({ has: page.getByRole('textbox', { name: 'Course name' }) })
  const box = name.getByRole('textbox')
  const faults = new Map([['a field', await pictureOf(box)]])
  await page.getByRole('button', { name: 'Start the outing' }).click()
  await expect(name).toContainText('Course name is missing.')
  await page.getByRole('heading', { name: 'Start an outing' }).scrollIntoViewIfNeeded()
  faults.set('a field at fault', await pictureOf(box))
  expect(alike(faults, markShare)).toEqual([])
  const sign = await name.locator('.fault').evaluate(fault => getComputedStyle(fault, '::before').content)
  expect(sign).toContain('!')

  const rules = page.getByRole('checkbox', { name: 'Played under the Rules' })
  const boxes = new Map([['ticked', await pictureOf(rules)]])
  await rules.click()
  boxes.set('not ticked', await pictureOf(rules))
  expect(alike(boxes, keyShare)).toEqual([])

  await page.goto(server.url)
  await openFile(page, dayOfStrokes, 'Alder')
  await goToHole(page, 2)
  // The ticks are in the accent, and the browser draws them without it.
  expect(await hueOf(page.locator('.ball-strokes').first())).toBeLessThanOrEqual(2)
  const row = (player: string) => page.getByRole('region', { name: player, exact: true })
  await expect(row('Birch').locator('.ball-strokes')).toHaveText(/match.*points/)
  await expect(row('Alder').locator('.ball-strokes')).toHaveText(/both/)
  const ticks = new Map([
    ['no stroke', await pictureOf(row('Birch').locator('.ticks').first())],
    ['one stroke', await pictureOf(row('Cedar').locator('.ticks').first())],
    ['two strokes', await pictureOf(row('Cedar').locator('.ticks').last())],
  ])
  expect(alike(ticks, 0.1)).toEqual([])

  await whenOnServer(page)
  const last = page.locator('.foot-word').last()
  const squares = new Map([['on the server', await squareOf(last)]])
  await server.kill()
  await tapScore(page, 'Alder', 6)
  await expect(foot(page)).toContainText('1 to send')
  squares.set('to send', await squareOf(last))
  expect(alike(squares, 0.2)).toEqual([])
  expect(phone.complaints.filter(text => !text.includes('net::ERR') && !text.includes('WebSocket'))).toEqual([])
})

test('a measure that sees no hue finds states that are told apart by hue alone', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' })
  await openFile(page, dayOfMarks, 'Alder')
  await seeWith(page, 'achromatopsia')
  // The chosen key in a violet as light as the key at rest; the holes of both sides at one height, in red and in blue.
  await page.evaluate(() => {
    const sheet = document.styleSheets[0]
    for (const rule of [
      '.key[aria-pressed="true"] { background: #f9e2ff !important; color: var(--ink) !important; }',
      '.match .mark-solid { y: 2px; height: 16px; fill: #a00000; }',
      '.match .mark-solid:nth-of-type(2) { fill: #3434ff; }',
    ]) {
      sheet?.insertRule(rule, sheet.cssRules.length)
    }
  })
  const found = await everythingAlike(page)
  expect(found).toContain('at rest = chosen')
  expect(found).toContain('won above = won below')
  noComplaints([phone])
  await server.stop()
})
