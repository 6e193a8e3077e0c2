import { expect, type Page, test } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { chosenKey } from './kit/golfer.ts'
import { pressOn, tabTo } from './kit/keyboard.ts'
import { openFile } from './kit/outing-file.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true })
const tab = (page: Page, name: string) => page.getByRole('link', { name, exact: true })
const strokesOf = (name: string, hole: number) => fourPlayers.find(each => each.name === name)?.strokes[hole - 1] ?? 0

/** Two of the four, so that a lap of the page is short. */
const twoPlayers = {
  ...autumnDay,
  players: autumnDay.players.slice(0, 2),
  groups: [{ id: 'two', name: 'Group 1', balls: ['alder', 'birch'] }],
  games: [
    { id: 'match', format: 'singles-match', sides: [['alder'], ['birch']], allowance: 100 },
    { id: 'points', format: 'stableford', sides: [['alder'], ['birch']], allowance: 100 },
  ],
  scores: [],
}

/** The score's key, or the one behind `more`; the focus stays in the row that it was pressed in. */
async function scoreByKeys(page: Page, player: string, score: number): Promise<void> {
  const key = button(page, `${player} ${score}`)
  if (!(await key.isVisible())) await pressOn(page, button(page, `${player} more`))
  if (!(await key.evaluate(element => element === document.activeElement))) await tabTo(page, key)
  await page.keyboard.press('Enter')
  await expect(chosenKey(page, player, score)).toBeVisible()
  expect(await page.evaluate(() => document.activeElement !== document.body)).toBe(true)
}

test('a whole round by the keyboard alone: every control is reached, seen and left again', async ({ browser }) => {
  test.setTimeout(120_000)
  const { server, phone, page } = await openServed(browser)
  await openFile(page, twoPlayers, 'Alder')
  const isOn = (hole: number) => expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeFocused()

  for (let hole = 1; hole <= 18; hole++) {
    await isOn(hole)
    await scoreByKeys(page, 'Alder', strokesOf('Alder', hole))
    await scoreByKeys(page, 'Birch', strokesOf('Birch', hole))
    if (hole === 1) await orderOnTheHole(page)
    if (hole === 2) await undone(page)
    if (hole === 4) await moreOnTheHole(page)
    if (hole === 18) break
    await pressOn(page, button(page, 'Next hole'))
    if (hole % 3 === 0) {
      await expect(page.getByRole('heading', { name: /Fresh three/ })).toBeFocused()
      await pressOn(page, button(page, `To hole ${hole + 1}`))
    }
  }

  await pressOn(page, button(page, 'Finish'))
  await expect(page.getByRole('heading', { name: 'All scores in' })).toBeFocused()
  await pressOn(page, tab(page, 'Board'))
  await expect(page.getByRole('heading', { name: 'Board' })).toBeFocused()
  await pressOn(page, tab(page, 'Card'))
  await expect(page.getByRole('heading', { name: 'Card', exact: true })).toBeFocused()

  await test.step('a box of the card is corrected, and the focus is back on it', async () => {
    await pressOn(page, page.getByRole('button', { name: /^Birch hole 18: 4, / }))
    await pressOn(page, button(page, 'Birch 5'))
    await expect(page.getByRole('button', { name: /^Birch hole 18: 5, / })).toBeFocused()
  })
  await test.step('certified', async () => {
    await pressOn(page, button(page, 'Certify as Alder'))
    await expect(page.getByRole('region', { name: 'Certification' })).toContainText('Alder: certified')
  })
  noComplaints([phone])
  await server.stop()
})

/** From the heading: the keys of each row, what is the player's own, then the bar at the bottom, then the tabs; and round again. */
async function orderOnTheHole(page: Page): Promise<void> {
  await pressOn(page, tab(page, 'Hole'))
  await page.getByRole('heading', { name: 'Hole 1', exact: true }).focus()
  const passed = await tabTo(page, tab(page, 'Share'))
  const order = ['Alder 3', 'Alder more', 'Birch 3', 'Birch more', 'Next hole', 'Hole', 'Board', 'Card', 'Share']
  const places = order.map(name => passed.indexOf(name))
  expect(places, passed.join(' | ')).toEqual([...places].sort((a, b) => a - b))
  expect(places).not.toContain(-1)
}

async function undone(page: Page): Promise<void> {
  await pressOn(page, page.getByRole('button', { name: /^Undo Birch/ }))
  await expect(chosenKey(page, 'Birch', strokesOf('Birch', 2))).toHaveCount(0)
  await scoreByKeys(page, 'Birch', strokesOf('Birch', 2))
}

/** Opened and closed again; nothing in it holds the focus. */
async function moreOnTheHole(page: Page): Promise<void> {
  const more = page.getByRole('button', { name: 'More on this hole' })
  await pressOn(page, more)
  await expect(page.getByRole('region', { name: 'Concession' })).toBeVisible()
  await tabTo(page, tab(page, 'Share'))
  await pressOn(page, page.getByRole('button', { expanded: true }))
  await expect(page.getByRole('region', { name: 'Concession' })).toHaveCount(0)
}

test('the main screens are heard as what they are', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, { ...twoPlayers, scores: autumnDay.scores.slice(0, 2) }, 'Alder')
  const words = page.getByRole('status').filter({ hasText: 'on this phone' })
  await tab(page, 'Board').click()
  await expect(page.getByRole('main')).toMatchAriaSnapshot(`
    - heading "Board" [level=1]
    - group "Games shown":
      - radio "All" [checked]
      - radio "Singles match"
      - radio "Stableford"
    - region "Singles match":
      - heading /Singles match/ [level=2]
      - img /Match line/
    - region "Stableford":
      - heading /Stableford/ [level=2]
      - list:
        - listitem:
          - img /Strip of Birch/
        - listitem:
          - img /Strip of Alder/
  `)
  await tab(page, 'Card').click()
  await expect(page.getByRole('main')).toMatchAriaSnapshot(`
    - heading "Card" [level=1]
    - table "Hole by hole":
      - rowgroup:
        - row "Hole Par Alder Birch"
    - region "Certification":
      - heading "Certification" [level=2]
      - group "Who holds this phone":
        - radio "Alder" [checked]
      - region "Alder":
        - heading /Alder. not certified/ [level=3]
        - button "Certify as Alder"
    - region "Result":
      - textbox "The result as text"
  `)
  await page.getByRole('link', { name: 'Hole 18', exact: true }).click()
  await expect(page.getByRole('main')).toMatchAriaSnapshot(`
    - img /Strip of Alder/
    - heading "Hole 18" [level=1]
    - region "Alder":
      - heading "Alder" [level=2]
      - group "Score of Alder":
        - button "Alder 3"
        - button "Alder 4"
        - button "Alder 5" [pressed]
        - button "Alder 6"
        - button "Alder 7"
        - button "Alder more"
  `)
  await expect(words).toHaveAttribute('aria-live', 'polite')
  await expect(page.getByRole('navigation', { name: 'Parts of the outing' })).toMatchAriaSnapshot(`
    - navigation:
      - link "Hole"
      - link "Board"
      - link "Card"
      - link "Share"
  `)
  await page.getByRole('button', { name: 'Finish' }).click()
  await expect(page.getByRole('main')).toMatchAriaSnapshot(`
    - heading "All scores in" [level=1]
    - region /Singles match/:
      - list:
        - listitem: /Birch beat Alder/
    - region "Result":
      - button "Copy the result"
      - status
      - textbox "The result as text"
  `)
  await tab(page, 'Share').click()
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  await expect(page.getByRole('main')).toMatchAriaSnapshot(`
    - heading "Share" [level=1]
    - group "Invite":
      - radio "to score" [checked]
    - region "By link or QR code":
      - heading "By link or QR code" [level=2]
      - textbox "Invite link"
  `)
  noComplaints([phone])
  await server.stop()
})
