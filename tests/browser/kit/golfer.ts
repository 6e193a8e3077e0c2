import { expect, type Locator, type Page } from '@playwright/test'
import { fourPlayers, quillmoor, type TestPlayer } from '#tests/kit/quillmoor.ts'

/** What a person does with the page: everything by the role and the name that they see or hear. */

export interface RoundToStart {
  readonly players: readonly TestPlayer[]
  readonly games: readonly string[]
  /** The sides of the four-ball match, as they are read. */
  readonly sides?: string
  /** By game: what its fields are set to, by their names; radios, lists and figures. */
  readonly details?: Readonly<Record<string, Readonly<Record<string, string>>>>
  /** How many share a ball, as it is read, and who with whom. */
  readonly oneBallOf?: string
  readonly partners?: string
  /** Nine holes of the course, from this hole on; eighteen from the 1st when not given. */
  readonly nineFrom?: number
  /** What the players' figures are. */
  readonly handicap?: 'Course Handicap' | 'Strokes'
}

export const fourBallAndPoints: RoundToStart = {
  players: fourPlayers,
  games: ['Stableford', 'Four-ball match'],
  sides: 'Alder & Cedar v Birch & Rowan',
}

export async function startOuting(page: Page, round: RoundToStart = fourBallAndPoints): Promise<void> {
  await page.getByRole('link', { name: 'Start an outing' }).click()
  await typeCourse(page, round.nineFrom === undefined ? 18 : 9)
  for (const [place, player] of round.players.entries()) await typePlayer(page, place + 1, player, round.handicap)
  if (round.oneBallOf !== undefined) await page.getByRole('radio', { name: round.oneBallOf }).check({ force: true })
  if (round.partners !== undefined) {
    const partners = page.getByRole('group', { name: 'Partners' })
    await partners.getByRole('radio', { name: round.partners }).check({ force: true })
  }
  for (const game of round.games) await tick(page, game)
  // It stands ticked on a new page.
  if (round.oneBallOf === undefined && !round.games.includes('Stableford')) await tick(page, 'Stableford', false)
  if (round.sides !== undefined) await page.getByRole('radio', { name: round.sides }).first().check({ force: true })
  for (const [game, fields] of Object.entries(round.details ?? {})) await setFields(page, game, fields)
  if (round.nineFrom !== undefined) await page.getByLabel('Start hole').selectOption(String(round.nineFrom))
  await page.getByRole('button', { name: 'Start the outing' }).click()
  await expect(page.getByRole('button', { name: new RegExp(`^${round.players[0]?.name}.* more$`) })).toBeVisible()
}

/** A game may be on already; it may lie in a family that is closed. */
async function tick(page: Page, game: string, isOn = true): Promise<void> {
  const box = page.getByRole('checkbox', { name: game, exact: true })
  const closed = page.locator('details.family:not([open]) > summary')
  while (!(await box.isVisible()) && (await closed.count()) > 0) await closed.first().click()
  await box.setChecked(isOn, { force: true })
}

/** The settings of a game that is chosen, also those behind its details. */
async function setFields(page: Page, game: string, fields: Readonly<Record<string, string>>): Promise<void> {
  const section = page.getByRole('region', { name: game, exact: true })
  await section.getByText(`${game} details`).click()
  for (const [name, value] of Object.entries(fields)) {
    const list = section.getByRole('combobox', { name, exact: true })
    if (await list.isVisible()) await list.selectOption(value)
    else await section.getByRole('group', { name }).getByRole('radio', { name: value }).check({ force: true })
  }
}

/** Puts one more game into a running outing, as its format proposes it. */
export async function addGame(page: Page, game: string): Promise<void> {
  await openTab(page, 'Board')
  await page.getByRole('link', { name: 'Choose games' }).click()
  await expect(page.getByRole('heading', { name: 'Games', exact: true })).toBeVisible()
  await tick(page, game)
  await page.getByRole('button', { name: `Put in ${game}` }).click()
  await expect(page.getByText(`Change ${game}`, { exact: true })).toBeVisible()
}

/** The ball was picked up. */
export async function pickUp(page: Page, player: string): Promise<void> {
  await page.getByRole('button', { name: `${player} more`, exact: true }).click()
  const key = page.getByRole('button', { name: `${player} picked up`, exact: true })
  await byThumb(page, () => key.click())
  await yesUntil(page, page.getByRole('button', { name: `${player} more, picked up`, exact: true }))
}

async function typeCourse(page: Page, length: 9 | 18): Promise<void> {
  await page.getByRole('textbox', { name: 'Course name' }).fill(quillmoor.name)
  await page.getByRole('radio', { name: `${length} holes` }).check({ force: true })
  for (const [place, par] of quillmoor.pars.slice(0, length).entries()) {
    const hole = place + 1
    if (par !== 4) await page.getByRole('button', { name: `Hole ${hole} par ${par}`, exact: true }).click()
    const index = String(quillmoor.indexes[place])
    await page.getByRole('textbox', { name: `Hole ${hole} stroke index`, exact: true }).fill(index)
  }
}

async function typePlayer(
  page: Page,
  n: number,
  player: TestPlayer,
  handicap: RoundToStart['handicap'] = 'Course Handicap',
): Promise<void> {
  const name = page.getByRole('textbox', { name: `Player ${n} name` })
  if (!(await name.isVisible())) await page.getByRole('button', { name: 'Add a player' }).click()
  await name.fill(player.name)
  const kind = page.getByRole('group', { name: `Player ${n} has` })
  await kind.getByRole('radio', { name: handicap }).check({ force: true })
  const figure = handicap === 'Strokes' ? `Player ${n} strokes` : `Player ${n} Course Handicap`
  await page.getByRole('textbox', { name: figure }).fill(String(player.courseHandicap))
}

/**
 * The text of the invite link on the page for sharing, once the outing is on the server: who comes earlier is told to try
 * again and is asked for no name.
 */
export async function readInviteLink(page: Page): Promise<string> {
  await whenOnServer(page)
  await openTab(page, 'Share')
  return page.getByRole('textbox', { name: 'Invite link' }).inputValue()
}

/** Follows an invite on a phone of its own. */
export async function joinBy(page: Page, link: string, name: string): Promise<void> {
  await page.goto(link)
  await page.getByRole('textbox', { name: 'Your name' }).fill(name)
  await page.getByRole('button', { name: 'Join the outing' }).click()
  await expect(page.getByRole('heading', { name: 'Alder' })).toBeVisible()
}

export async function openTab(page: Page, tab: 'Hole' | 'Board' | 'Card' | 'Share'): Promise<void> {
  await page.getByRole('link', { name: tab, exact: true }).click()
}

/** Goes to a hole through the card, from wherever the page is. */
export async function goToHole(page: Page, hole: number): Promise<void> {
  await openTab(page, 'Card')
  await page.getByRole('link', { name: `Hole ${hole}`, exact: true }).click()
  await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
}

/** Two keys nearer in time than this are a burst to the page, and no thumb's work. */
const thumbMs = 170
const lastTap = new WeakMap<Page, number>()

/** One tap on the key of the score, behind `more` when it lies further from the level. */
export async function tapKey(page: Page, player: string, score: number): Promise<void> {
  const key = page.getByRole('button', { name: `${player} ${score}`, exact: true })
  if (!(await key.isVisible())) await page.getByRole('button', { name: `${player} more`, exact: true }).click()
  await byThumb(page, () => key.click())
}

/** Presses as far in time from the last key as a thumb does. */
export async function byThumb(page: Page, press: () => Promise<void>): Promise<void> {
  const early = (lastTap.get(page) ?? 0) + thumbMs - Date.now()
  if (early > 0) await page.waitForTimeout(early)
  await press()
  lastTap.set(page, Date.now())
}

/** The question about keys that the page has held. */
export const heldQuestion = (page: Page) => page.getByRole('alertdialog')

/** A tap, and a yes where the page asks, until it shows the score: from then on the words at the foot speak of it too. */
export async function tapScore(page: Page, player: string, score: number): Promise<void> {
  await tapKey(page, player, score)
  await yesUntil(page, chosenKey(page, player, score))
}

async function yesUntil(page: Page, shown: Locator): Promise<void> {
  await expect(shown.or(heldQuestion(page)).first()).toBeVisible()
  if (await heldQuestion(page).isVisible()) {
    await heldQuestion(page).getByRole('button', { name: 'Put in' }).click()
  }
  await expect(shown).toBeVisible()
}

/** The score that the page shows as chosen. */
export const chosenKey = (page: Page, player: string, score: number) =>
  page
    .getByRole('button', { name: new RegExp(`^${player} (more, )?${score}$`), pressed: true })
    .or(page.getByRole('button', { name: `${player} more, ${score}`, exact: true }))

export const foot = (page: Page) => page.getByRole('status').filter({ hasText: 'phone' })

/** Waits until the words at the foot say that the server has everything. */
export async function whenOnServer(page: Page): Promise<void> {
  await expect(foot(page)).toContainText('on the server')
}
