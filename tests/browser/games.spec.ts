import { expect, type Page, test } from '@playwright/test'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { boardTellsSettled, settleDownload } from './kit/agree.ts'
import { axeClean } from './kit/axe.ts'
import { addGame, goToHole, openTab, pickUp, startOuting, tapKey, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone, type Phone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const sides = 'Alder & Cedar v Birch & Rowan'

/** The strokes of the list on a hole, for everybody but those named. */
async function scoreHole(page: Page, hole: number, without: readonly string[] = []): Promise<void> {
  await goToHole(page, hole)
  for (const { name, strokes } of fourPlayers) {
    if (!without.includes(name)) await tapScore(page, name, strokes[hole - 1] ?? 0)
  }
}

const more = (page: Page) => page.getByRole('button', { name: 'More on this hole' }).click()

const chooseGame = (page: Page, game: string) =>
  page.getByRole('group', { name: 'In which game' }).getByRole('radio', { name: game, exact: true }).check()

/** Concedes the hole of the page in a game; two taps. */
async function concedeHole(page: Page, game: string, side: string): Promise<void> {
  await more(page)
  await chooseGame(page, game)
  const concession = page.getByRole('region', { name: 'Concession' })
  await concession.getByRole('radio', { name: side, exact: true }).check()
  await concession.getByRole('button', { name: new RegExp(`^${side} give .* hole`) }).click()
  await expect(concession.getByText('A concession is final')).toBeVisible()
  await axeClean(page, 'hole', 'more: concession asked again')
  await concession.getByRole('button', { name: 'Yes, it is conceded' }).click()
  await expect(page.getByRole('region', { name: 'Noted on this hole' })).toContainText(`hole conceded by ${side}`)
}

async function certify(page: Page, as: string, button: string): Promise<void> {
  const section = page.getByRole('region', { name: 'Certification' })
  await section.getByRole('group', { name: 'Who holds this phone' }).getByRole('radio', { name: as }).check()
  await section.getByRole('button', { name: button }).click()
}

async function playNine(phone: Phone): Promise<void> {
  const { page } = phone
  await scoreHole(page, 1)
  await goToHole(page, 2)
  await tapScore(page, 'Alder', 6)
  await concedeHole(page, 'Four-ball match', 'Birch & Rowan')
  await scoreHole(page, 2)
  await scoreHole(page, 3)
  await more(page)
  await chooseGame(page, 'Four-ball match')
  await page
    .getByRole('region', { name: 'Hole 3 as both sides agree' })
    .getByRole('radio', { name: 'won by Birch & Rowan' })
    .check()
  await page.getByRole('button', { name: 'Put in hole 3: won by Birch & Rowan' }).click()
  await expect(page.getByText('Four-ball match: agreed, won by Birch & Rowan')).toBeVisible()
  await scoreHole(page, 4, ['Rowan'])
  await pickUp(page, 'Rowan')
  await more(page)
  await page.getByRole('textbox', { name: 'Rowan picked up; most likely score' }).fill('7')
  await axeClean(page, 'hole', 'more: most likely score')
  await page.getByRole('button', { name: 'Put in Rowan: 7' }).click()
  await expect(page.getByText('Rowan: most likely score 7')).toBeVisible()
  await goToHole(page, 5)
  await more(page)
  await chooseGame(page, 'Nassau')
  await page.getByRole('region', { name: 'Press' }).getByRole('radio', { name: 'Alder & Cedar' }).check()
  await axeClean(page, 'hole', 'more: a press')
  await page.getByRole('button', { name: 'Alder & Cedar press from hole 5' }).click()
  await expect(page.getByText('Nassau: Alder & Cedar pressed here')).toBeVisible()
  for (let hole = 5; hole <= 18; hole++) await scoreHole(page, hole)
}

test('four players, four games: conceded, agreed, pressed, picked up, certified and ruled; the board is what settle says', async ({
  browser,
}) => {
  test.setTimeout(240_000)
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder

  await test.step('the games of the first tee, and one that is added later', async () => {
    await page.goto(server.url)
    await startOuting(page, {
      players: fourPlayers,
      games: ['Stableford', 'Four-ball match', 'Nassau'],
      sides,
      details: { Nassau: { 'Nassau sides': sides, 'Nassau presses': 'when a side asks' } },
    })
    await axeClean(page, 'hole', 'nothing written')
    await addGame(page, 'Skins')
    await axeClean(page, 'games', 'as they stand')
    await openTab(page, 'Card')
    await expect(page.getByRole('region', { name: 'History' })).toContainText('Alder added Skins')
  })

  await test.step('who receives what is read on the tee, without a tap', async () => {
    await goToHole(page, 4)
    const row = page.getByRole('region', { name: 'Alder' })
    await expect(row).toContainText('points')
    await expect(row).toContainText('Nassau')
  })

  await test.step('eighteen holes', () => playNine(alder))

  await test.step('a concession of what is decided is not offered', async () => {
    await goToHole(page, 6)
    await more(page)
    await chooseGame(page, 'Four-ball match')
    await expect(page.getByText('This match is decided already')).toBeVisible()
    await axeClean(page, 'hole', 'more: match decided')
  })

  await test.step('the board tells every game as settle does', async () => {
    await whenOnServer(page)
    await boardTellsSettled(page, await settleDownload(page, 'whole'))
    await axeClean(page, 'board', 'parts and presses')
  })

  await test.step('player and marker certify; a change brings one down', async () => {
    await openTab(page, 'Card')
    const card = page.getByRole('region', { name: 'Certification' }).getByRole('region', { name: 'Alder' })
    await page.getByText('Markers', { exact: true }).click()
    await page.getByRole('combobox', { name: 'Marker of Alder' }).selectOption('Birch')
    await certify(page, 'Alder', 'Certify as Alder')
    await expect(card).toContainText('Alder: certified')
    await certify(page, 'Birch', 'Certify Alder as marker')
    await expect(card).toContainText('Certified by both.')
    await goToHole(page, 18)
    await tapScore(page, 'Alder', 6)
    await openTab(page, 'Card')
    await expect(card).toContainText('certified, but a score has changed since')
    await expect(card).toContainText('Hole 18: changed since certified by the player')
    await axeClean(page, 'card', 'changed since certified')
  })

  await test.step('the marker’s own record stands beside the card, and the two choose', async () => {
    await page.getByText('Markers', { exact: true }).click()
    await page.getByRole('combobox', { name: 'This phone keeps the marker’s record of' }).selectOption('Rowan')
    await axeClean(page, 'card', 'markers')
    await goToHole(page, 18)
    await tapKey(page, 'Rowan', 6)
    await expect(page.getByText('two scores: 5 by Alder, 6 by Alder as marker')).toBeVisible()
    await axeClean(page, 'hole', 'marker’s record')
    await openTab(page, 'Card')
    const card = page.getByRole('region', { name: 'Certification' }).getByRole('region', { name: 'Rowan' })
    await expect(card).toContainText('Hole 18: card 5, marker 6')
    await axeClean(page, 'card', 'records that differ')
    await card.getByRole('button', { name: 'Rowan hole 18: 5' }).click()
    await expect(card).not.toContainText('marker 6')
  })

  await test.step('a ruling moves the results', async () => {
    await page.getByRole('link', { name: 'Rulings' }).click()
    await expect(page.getByText('The committee decides.')).toBeVisible()
    await page.getByRole('combobox', { name: 'What happened' }).selectOption('the card was not certified')
    await page.getByRole('checkbox', { name: 'Model Local Rule L-1 is in force' }).check()
    await page.getByRole('button', { name: 'Take it into the ruling' }).click()
    await page.getByRole('combobox', { name: 'Whom it concerns' }).selectOption('Birch')
    await page.getByRole('combobox', { name: 'On which hole' }).selectOption('18')
    await page.getByRole('textbox', { name: 'Reason' }).fill('not certified')
    await page.getByRole('button', { name: 'Make this ruling' }).click()
    await expect(page.getByText('Birch: 2 penalty strokes, hole 18').first()).toBeVisible()
    await whenOnServer(page)
    await page.getByRole('combobox', { name: 'What happened' }).selectOption('a partner came late to a four-ball')
    await page.getByRole('combobox', { name: 'Who came late' }).selectOption('Rowan')
    await page.getByRole('combobox', { name: 'Hole in play' }).selectOption('1')
    await page.getByRole('checkbox', { name: 'The partner had begun this hole' }).check()
    await expect(page.getByText('May play from hole 2.')).toBeVisible()
    await page.getByRole('button', { name: 'Take it into the ruling' }).click()
    await expect(page.getByRole('combobox', { name: 'Plays from hole' })).toHaveValue('2/1')
    await page.getByRole('button', { name: 'Make this ruling' }).click()
    await expect(page.getByText('Rowan: no penalty').first()).toBeVisible()
    await whenOnServer(page)
    const settled = await settleDownload(page, 'whole')
    expect(settled.notes.rulings).toHaveLength(2)
    expect(settled.notes.absences).toMatchObject([{ joinedAt: [2, 1] }])
    await boardTellsSettled(page, settled)
  })

  noComplaints([alder])
  await server.stop()
})

test('a foursomes of two balls: one score a hole for each side, who tees off, and the drive that was used', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  await startOuting(page, {
    players: fourPlayers,
    games: ['Foursomes match', 'Foursomes Stableford'],
    oneBallOf: 'one ball of two',
    partners: sides,
  })
  const ask = page.getByRole('region', { name: 'Tee shot of Alder & Cedar' })
  await ask.getByRole('button', { name: 'Cedar' }).click()
  const row = page.getByRole('region', { name: 'Alder & Cedar', exact: true })
  await expect(row).toContainText('Cedar tees off')
  await expect(ask).toBeHidden()
  await expect(page.getByRole('region', { name: 'Tee shot of Birch & Rowan' })).toBeVisible()
  await axeClean(page, 'hole', 'tee shots asked')
  for (const hole of [1, 2, 3]) {
    await goToHole(page, hole)
    await tapScore(page, 'Alder & Cedar', 5)
    await tapScore(page, 'Birch & Rowan', 4 + (hole % 2))
  }
  await expect(row).toContainText('Cedar tees off')
  await more(page)
  await page.getByRole('group', { name: 'Alder & Cedar at hole 3' }).getByRole('radio', { name: 'Alder' }).click()
  await expect(row).toContainText('Alder tees off')
  await page.getByRole('group', { name: 'Drive of Alder & Cedar' }).getByRole('radio', { name: 'Cedar' }).click()
  await expect(page.getByText('Alder & Cedar: drive of Cedar')).toBeVisible()
  await axeClean(page, 'hole', 'more: tee shots and drives')
  await whenOnServer(page)
  const settled = await settleDownload(page, 'whole')
  expect(settled.cards.map(({ name }) => name).sort()).toEqual(['Alder & Cedar', 'Birch & Rowan'])
  await boardTellsSettled(page, settled)
  noComplaints([alder])
  await server.stop()
})

test('a match level after nine goes on to extra holes, and somebody who does not play is noted', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder')
  const { page } = alder
  await page.goto(server.url)
  const [first, second, third] = fourPlayers.map(player => ({ ...player, courseHandicap: 0 }))
  const players = [first, second, third].filter(player => player !== undefined)
  await startOuting(page, {
    players,
    games: ['Singles match', 'Stroke play, gross', 'Skins, gross'],
    sides: 'Alder v Birch',
    handicap: 'Strokes',
    nineFrom: 1,
  })
  await more(page)
  const there = page.getByRole('region', { name: 'Who is there' })
  await there.getByRole('radio', { name: 'Cedar' }).check()
  await there.getByRole('button', { name: 'Cedar did not come' }).click()
  await there.getByRole('button', { name: 'Yes, Cedar is not here' }).click()
  await expect(page.getByText('Cedar is not here')).toBeVisible()
  await there.getByRole('button', { name: 'Cedar plays the whole round' }).click()
  await there.getByRole('button', { name: 'Cedar withdraws from hole 1 on' }).click()
  await there.getByRole('button', { name: 'Yes, Cedar withdraws' }).click()
  await expect(page.getByText('Cedar has withdrawn')).toBeVisible()
  await there.getByRole('button', { name: 'Cedar plays the whole round' }).click()
  await there.getByRole('button', { name: 'Cedar leaves from hole 1 on' }).click()
  await there.getByRole('button', { name: 'Yes, Cedar leaves' }).click()
  await expect(page.getByText('Cedar has left, from hole 1 on')).toBeVisible()
  await axeClean(page, 'hole', 'more: somebody has left')
  for (let hole = 1; hole <= 9; hole++) {
    await goToHole(page, hole)
    for (const player of ['Alder', 'Birch']) await tapScore(page, player, 4)
  }
  await expect(page.getByRole('region', { name: 'Skins left after the last hole' })).toContainText('9 left')
  await axeClean(page, 'hole', 'skins left after the last hole')
  await more(page)
  await page.getByRole('button', { name: 'Play on: hole 1 as the 10th' }).click()
  await page.getByRole('button', { name: 'Next hole' }).click()
  await expect(page.getByRole('heading', { name: 'Hole 1', exact: true })).toBeVisible()
  await tapScore(page, 'Alder', 5)
  await tapScore(page, 'Birch', 4)
  await axeClean(page, 'hole', 'one hole more')
  await openTab(page, 'Board')
  await expect(page.getByRole('region', { name: 'Singles match' })).toContainText('Birch won at the 10th')
  await expect(page.getByRole('region', { name: 'Skins, gross' })).toContainText(/Birch\s*9/)
  await openTab(page, 'Card')
  await expect(page.getByRole('region', { name: 'History' })).toContainText('Alder changed the order of play')
  noComplaints([alder])
  await server.stop()
})
