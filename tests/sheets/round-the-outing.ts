import { expect } from '@playwright/test'
import { openTab, readInviteLink, whenOnServer } from '../browser/kit/golfer.ts'
import { openPhone } from '../browser/kit/round.ts'
import { dayUpTo, rollUp } from './days.ts'
import { goTo, goToAddress, openAll, openDay, openFirst, press, type Story } from './stage.ts'

/** The last score is in: how it came out, the card checked, certified and closed. */
export const finished: Story = async stage => {
  const page = await openDay(stage, dayUpTo(18))
  await goTo(page, 'finish')
  await stage.show(page, 'Finish, all scores in', { window: true })
  await goTo(page, 'board')
  await stage.show(page, 'Board, round over', { window: true })
  await openAll(page)
  await stage.show(page, 'Board, round over, all open')
  await goTo(page, 'card')
  await page.getByRole('button', { name: /^Rowan hole 12/ }).click()
  await stage.show(page, 'Card, a box open')
  const certification = page.getByRole('region', { name: 'Certification' })
  await certification.getByRole('group', { name: 'Who holds this phone' }).getByRole('radio', { name: 'Alder' }).check()
  await press(page, 'Certify as Alder')
  await press(page, 'Close the cards')
  await expect(page.getByText('The cards are closed.')).toBeVisible()
  await stage.show(page, 'Card, certified and closed')
}

/** What the desk sets right: games, corrections, rulings. */
export const desk: Story = async stage => {
  const page = await openDay(stage, dayUpTo(7))
  await goTo(page, 'games')
  await stage.show(page, 'Games')
  await openAll(page)
  await stage.show(page, 'Games, all open')
  await goTo(page, 'mend')
  await stage.show(page, 'Corrections')
  await openAll(page)
  await stage.show(page, 'Corrections, all open')
  await goTo(page, 'rulings')
  await stage.show(page, 'Rulings, none yet')
  await page.getByLabel('What happened').selectOption({ index: 1 })
  await page.getByLabel('Whom it concerns', { exact: true }).last().selectOption('Birch')
  await page.getByRole('textbox', { name: 'Reason' }).fill('Late on the tee.')
  await press(page, 'Make this ruling')
  await stage.show(page, 'Rulings, one made')
}

/** Nobody ran it, twelve came. */
export const manyGroups: Story = async stage => {
  const page = await openDay(stage, rollUp)
  await goTo(page, 'board')
  await stage.show(page, 'Board of twelve', { window: true })
  await goTo(page, 'groups')
  await stage.show(page, 'Groups and players')
  await page.getByRole('textbox', { name: 'One player a line' }).fill('Alder 3\nYew 24')
  await page.getByRole('button', { name: 'Add 2 players' }).click()
  await expect(page.getByText(/name stands twice/)).toBeVisible()
  await stage.show(page, 'Groups, a name twice')
  await goTo(page, 'share')
  await stage.show(page, 'Share, three groups')
  await page.getByRole('radio', { name: 'to watch only' }).check({ force: true })
  await expect(page.getByRole('img', { name: 'QR code of the invite link' })).toBeVisible()
  await whenOnServer(page)
  const { page: watcher } = await openPhone(stage.browser, 'Oak', { hasOutages: true })
  await watcher.goto(await page.getByRole('textbox', { name: 'Invite link' }).inputValue())
  await watcher.getByRole('textbox', { name: 'Your name' }).fill('Willow')
  await press(watcher, 'Join the outing')
  await whenOnServer(watcher)
  await openTab(watcher, 'Hole')
  await stage.show(watcher, 'A phone that only watches')
}

/** Words said across the green, codes from phone to phone, a phone taken out. */
export const phones: Story = async stage => {
  const alder = await openDay(stage, dayUpTo(7))
  await whenOnServer(alder)
  const link = await readInviteLink(alder)
  await press(alder, 'Get three words')
  const words = alder.locator('.three-words')
  await expect(words).toBeVisible()
  const birch = await openFirst(stage, 'Birch')
  await goToAddress(birch, '/join')
  await birch.getByRole('textbox', { name: 'The three words' }).fill((await words.textContent()) ?? '')
  await birch.getByRole('textbox', { name: 'Your name' }).fill('Birch')
  await press(birch, 'Ask to be let in')
  await expect(alder.getByText('Birch asks to be let in')).toBeVisible()
  await stage.show(birch, 'Join, asked')
  await stage.show(alder, 'Share, three words, somebody asks', { window: true })
  await press(alder, 'Not now, Birch')
  await press(alder, 'Show the codes')
  await expect(alder.getByRole('img', { name: /^Code 1 of/ })).toBeVisible()
  await stage.show(alder, 'Share, the codes of the hand-over')
  const { page: cedar } = await openPhone(stage.browser, 'Cedar', { hasOutages: true })
  await cedar.goto(link)
  await cedar.getByRole('textbox', { name: 'Your name' }).fill('Cedar')
  await press(cedar, 'Join the outing')
  await whenOnServer(cedar)
  await press(alder, 'Take Cedar out')
  await stage.show(alder, 'Share, a phone taken out: sure?')
  await press(alder, 'Take it out')
  await expect(cedar.getByText('The desk took this phone out.', { exact: false }).first()).toBeVisible()
  await goTo(cedar, 'share')
  await stage.show(cedar, 'Share, on the phone taken out', { window: true })
}
