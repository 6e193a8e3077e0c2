import { expect, type Page, test } from '@playwright/test'
import { notedDay } from '#tests/kit/noted-outing.ts'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { axeClean } from './kit/axe.ts'
import { goToHole, joinBy, pickUp, readInviteLink, tapScore } from './kit/golfer.ts'
import { choose, dayThrough, openPrepared } from './kit/prepared.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { openServed } from './kit/served.ts'

/** States of the pages of a round that no walk passes, each from an outing that is prepared. */

const isOn = (page: Page, name: string | RegExp) => expect(page.getByRole('heading', { name, level: 1 })).toBeVisible()
const opened = (page: Page, text: string) => page.locator('main').getByText(text, { exact: true }).first().click()

const fours = Array(18).fill(4)
const [match, points] = autumnDay.games
const singles = autumnDay.players.map(({ id }) => [id])

test('the hole, and what lies behind its button', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, dayThrough(3))
  await to('hole/3')
  await isOn(page, 'Hole 3')
  await axeClean(page, 'hole', 'all scores in')
  await to('hole/4')
  await page.getByRole('button', { name: 'Rowan more', exact: true }).click()
  await axeClean(page, 'hole', 'scores further off')
  await page.getByRole('button', { name: 'Rowan back to level' }).click()
  await pickUp(page, 'Rowan')
  await axeClean(page, 'hole', 'picked up')
  await page.evaluate(() => {
    navigator.wakeLock.request = () => Promise.reject(new DOMException('not now', 'NotAllowedError'))
  })
  await page.getByRole('button', { name: 'Keep the screen on' }).click()
  await expect(page.getByText('The phone does not keep it on now.')).toBeVisible()
  await axeClean(page, 'hole', 'screen not kept on')

  await page.getByRole('button', { name: 'More on this hole' }).click()
  await expect(page.getByRole('region', { name: 'Concession' })).toBeVisible()
  await axeClean(page, 'hole', 'more: match open')
  await choose(page, 'What is conceded', 'next stroke')
  await axeClean(page, 'hole', 'more: concession of a stroke')
  await choose(page, 'Game to stop or change', 'Four-ball match')
  await page.getByRole('button', { name: 'Change sides from hole 5' }).click()
  await axeClean(page, 'hole', 'more: other sides from here')
  await choose(page, 'Who is there', 'Cedar')
  await page.getByRole('button', { name: 'Cedar leaves from hole 4 on' }).click()
  await axeClean(page, 'hole', 'more: who is there')
  await choose(page, 'Hole 4 counts', 'nothing, for everybody')
  await axeClean(page, 'hole', 'more: hole out of play')
  noComplaints([phone])
  await server.stop()
})

test('a reset with nobody’s own, on one’s own, and where there is none', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, dayThrough(3))
  await to('hole/3')
  await page.getByText('Mine', { exact: true }).click()
  await to('reset/1')
  await expect(page.getByRole('region', { name: 'Your target and cue' })).toBeVisible()
  await axeClean(page, 'reset', 'own score alone')
  await to('reset/9')
  await isOn(page, 'This page does not exist.')
  await axeClean(page, 'reset', 'no such three')
  const watch = await openPrepared(page, server.url, dayThrough(3, { title: 'Oak counts' }), 'Oak')
  await watch('reset/1')
  await isOn(page, /Fresh three/)
  await axeClean(page, 'reset', 'nobody’s own')
  noComplaints([phone])
  await server.stop()
})

test('board, card and finish of a round just begun, under way and over', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const started = await openPrepared(page, server.url, { ...dayThrough(0), title: 'Before the first tee' })
  await started('board')
  await isOn(page, 'Board')
  await axeClean(page, 'board', 'nothing scored')
  await started('card')
  await isOn(page, 'Card')
  await axeClean(page, 'card', 'nothing written')

  const ahead = await openPrepared(page, server.url, dayThrough(4))
  await ahead('card')
  await expect(page.getByRole('link', { name: /To hole 5/ }).first()).toBeVisible()
  await axeClean(page, 'card', 'holes open')
  await page.getByRole('button', { name: /^Birch hole 4: / }).click()
  await axeClean(page, 'card', 'a box opened')

  const over = await openPrepared(page, server.url, autumnDay)
  await over('card')
  await expect(page.getByText('Every hole is written.')).toBeVisible()
  await axeClean(page, 'card', 'every hole written')
  await over('finish')
  await isOn(page, 'All scores in')
  await axeClean(page, 'finish', 'all in')
  await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }))
  await page.getByRole('button', { name: 'Copy the result' }).click()
  await axeClean(page, 'finish', 'text selected')
  await over('board')
  await axeClean(page, 'board', 'every game')
  await choose(page, 'Games shown', 'Four-ball match')
  await axeClean(page, 'board', 'one game of several')
  await opened(page, 'Hole by hole')
  await axeClean(page, 'board', 'a match hole by hole')
  noComplaints([phone])
  await server.stop()
})

test('a board with ties, carried skins, two scores, a game that waits, notes of every kind, or no game', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  const level = autumnDay.players.map(({ id }) => ({ ball: id, holes: fours }))
  const gross = { id: 'gross', format: 'stroke-play-gross', sides: singles }
  const skins = { id: 'skins', format: 'skins-gross', sides: singles }
  const tied = await openPrepared(page, server.url, {
    ...autumnDay,
    games: [gross, skins],
    main: 'gross',
    scores: level.map(({ ball, holes }, place) => ({ ball, holes: place > 1 ? holes.map(each => each + 1) : holes })),
  })
  await tied('board')
  await opened(page, 'How ties were split')
  await axeClean(page, 'board', 'countback opened')
  await opened(page, 'Hole by hole')
  await expect(page.getByText(/carried on/).first()).toBeVisible()
  await axeClean(page, 'board', 'skins carried')

  const [alders] = autumnDay.scores
  const two = await openPrepared(page, server.url, {
    ...autumnDay,
    players: autumnDay.players.map(each => (each.id === 'birch' ? { ...each, handicap: undefined } : each)),
    scores: [
      ...autumnDay.scores,
      { ball: 'alder', record: 'marker', holes: alders?.holes.map(each => (each ?? 0) + 5) },
    ],
  })
  await two('board')
  await expect(page.getByText(/waits/).first()).toBeVisible()
  await axeClean(page, 'board', 'a game that waits')
  await expect(page.getByText(/two scores/).first()).toBeVisible()
  await axeClean(page, 'board', 'two scores in the way')
  await two('hole/1')
  await expect(page.getByText(/two scores: /)).toBeVisible()
  await axeClean(page, 'hole', 'two scores away from the keys')

  const noted = await openPrepared(page, server.url, { ...autumnDay, ...notedDay })
  await noted('board')
  for (const details of await page.getByText('What else counted').all()) await details.click()
  await axeClean(page, 'board', 'penalties and withdrawals')

  const none = await openPrepared(page, server.url, { ...autumnDay, games: [], main: undefined })
  await none('board')
  await expect(page.getByText('No games in this outing.')).toBeVisible()
  await axeClean(page, 'board', 'no games')
  noComplaints([phone])
  await server.stop()
})

test('the last hole with a match level, and a card closed', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const two = {
    ...autumnDay,
    players: autumnDay.players.slice(0, 2).map(each => ({ ...each, handicap: { strokes: 0 } })),
  }
  const pair = [{ id: 'two', name: 'Group 1', balls: ['alder', 'birch'] }]
  const singlesMatch = [{ ...match, format: 'singles-match', sides: [['alder'], ['birch']] }]
  const level = await openPrepared(page, server.url, {
    ...two,
    groups: pair,
    games: singlesMatch,
    main: undefined,
    scores: ['alder', 'birch'].map(ball => ({ ball, holes: fours })),
  })
  await level('hole/18')
  await expect(page.getByRole('region', { name: 'Level after the last hole' })).toBeVisible()
  await axeClean(page, 'hole', 'level after the last hole')

  const closed = await openPrepared(page, server.url, { ...autumnDay, games: [points], closed: ['alder'] })
  await closed('hole/2')
  await expect(page.getByText('Card closed.')).toBeVisible()
  await axeClean(page, 'hole', 'card closed')
  noComplaints([phone])
  await server.stop()
})

test('a correction from another phone is a line on the hole', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const to = await openPrepared(page, server.url, dayThrough(1))
  await to('hole/1')
  const birch = await openPhone(browser, 'Birch')
  await joinBy(birch.page, await readInviteLink(page), 'Birch')
  await to('hole/1')
  await goToHole(birch.page, 1)
  await tapScore(birch.page, 'Cedar', 7)
  await expect(page.getByText('Birch changed Cedar’s 1st from 6 to 7')).toBeVisible()
  await axeClean(page, 'hole', 'a correction from another phone')
  noComplaints([phone, birch])
  await server.stop()
})
