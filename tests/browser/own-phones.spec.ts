import { expect, type Page, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import { readInviteLink, tapScore } from './kit/golfer.ts'
import { openPlain } from './kit/plain-file.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { openServed } from './kit/served.ts'

const carryOf = (page: Page, club: string) => page.getByRole('textbox', { name: `${club}, carry` })
const toBag = (page: Page) => page.getByRole('link', { name: 'Carries, lay-up number, habits' }).click()
const foot = (page: Page) => page.getByRole('status').filter({ hasText: 'on this phone' })

/** The player's own code, off the screen of a phone that has it. */
async function codeOn(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Show my code' }).click()
  const field = page.getByRole('textbox', { name: 'Your own link' })
  await expect(field).toHaveValue(/#\/own\//)
  return field.inputValue()
}

test('a bag goes by its owner’s code to another phone, on each shows what the other changed, and a lost phone is taken out', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  const other = await openPhone(browser, 'Alder again')

  await test.step('at first use a code is asked for; before it the bag is nowhere else', async () => {
    await toBag(page)
    await carryOf(page, 'Driver').fill('215')
    await carryOf(page, '7 iron').fill('145')
    await expect(foot(page)).toContainText('nowhere else')
    await page.getByRole('button', { name: 'Make my code' }).click()
    await expect(foot(page)).toContainText('on the server')
    await expect(page.getByText('Phone 1')).toBeVisible()
    await axeClean(page, 'bag', 'a code made, one phone')
  })

  const code = await test.step('the code is shown as a link and a QR code', async () => {
    const shown = await codeOn(page)
    await expect(page.getByRole('img', { name: 'Your own code, as a QR code' })).toBeVisible()
    await axeClean(page, 'bag', 'the code shown')
    return shown
  })

  await test.step('on the other phone it brings the bag, and the address keeps no secret', async () => {
    await other.page.goto(code)
    await expect(other.page.getByRole('heading', { name: 'Your bag, on this phone' })).toBeVisible()
    await expect.poll(() => other.page.url()).toMatch(/#\/own$/)
    await axeClean(other.page, 'own', 'a bag to take')
    await other.page.getByRole('button', { name: 'Take my bag onto this phone' }).click()
    await expect(carryOf(other.page, 'Driver')).toHaveValue('215')
    await expect(foot(other.page)).toContainText('on the server')
  })

  await test.step('a change on one shows on the other, also one made with no signal', async () => {
    await carryOf(other.page, '7 iron').fill('150')
    await expect(carryOf(page, '7 iron')).toHaveValue('150')
    await phone.context.setOffline(true)
    await carryOf(page, 'Driver').fill('220')
    await expect(foot(page)).toContainText('1 to send')
    await phone.context.setOffline(false)
    await expect(carryOf(other.page, 'Driver')).toHaveValue('220')
    await expect(foot(page)).toContainText('on the server')
  })

  await test.step('a phone that is lost is taken out, and its code with it', async () => {
    await page.getByRole('button', { name: 'Take Phone 2 out' }).click()
    await page.getByRole('button', { name: 'Take it out' }).click()
    await expect(page.getByText('no longer in')).toBeVisible()
    await axeClean(page, 'bag', 'a phone taken out')
    await expect(other.page.getByText('This phone was taken out')).toBeVisible()
    const third = await openPhone(browser, 'A finder')
    await third.page.goto(code)
    await third.page.getByRole('button', { name: 'Take my bag onto this phone' }).click()
    await expect(third.page.getByRole('alert')).toHaveText(
      'This code was stopped. Ask your other phone for the new one.',
    )
    await axeClean(third.page, 'own', 'a code that was stopped')
    noComplaints([third])
  })
  noComplaints([phone, other])
  await server.stop()
})

test('a bag that is here already is taken off only with a second tap, and what is no code says so', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await toBag(page)
  await carryOf(page, 'Driver').fill('230')
  await page.getByRole('button', { name: 'Make my code' }).click()
  await expect(foot(page)).toContainText('on the server')
  const code = await codeOn(page)

  const other = await openPhone(browser, 'Birch')
  await other.page.goto(server.url)
  await toBag(other.page)
  // One choice is a bag begun: it is asked about too before it goes.
  await other.page.getByText('metres', { exact: true }).click()
  await expect(other.page.getByText('Until you make one the bag is on this phone alone.')).toBeVisible()
  await axeClean(other.page, 'bag', 'a code asked for')
  await other.page.goto(code)
  await other.page.getByRole('button', { name: 'Take my bag onto this phone' }).click()
  await expect(other.page.getByText('There is a bag on this phone already.')).toBeVisible()
  await axeClean(other.page, 'own', 'another bag is here')
  await other.page.getByRole('button', { name: 'Take it, and remove the other' }).click()
  await expect(carryOf(other.page, 'Driver')).toHaveValue('230')
  await other.page.reload()
  await expect(carryOf(other.page, 'Driver')).toHaveValue('230')

  await other.page.goto(`${server.url}/#/own/nothing`)
  await expect(other.page.getByRole('alert')).toContainText('This is not a code of a bag.')
  await axeClean(other.page, 'own', 'no code')
  noComplaints([phone, other])
  await server.stop()
})

test('while one phone is in a round under the Rules the others of its owner advise on no shot', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const other = await openPhone(browser, 'Alder again')
  await toBag(page)
  for (const [club, carry] of [
    ['Driver', '215'],
    ['7 iron', '145'],
    ['Sand wedge', '85'],
  ] as const)
    await carryOf(page, club).fill(carry)
  await page.getByRole('button', { name: 'Make my code' }).click()
  await expect(foot(page)).toContainText('on the server')
  await other.page.goto(await codeOn(page))
  await other.page.getByRole('button', { name: 'Take my bag onto this phone' }).click()
  await expect(carryOf(other.page, 'Driver')).toHaveValue('215')

  let [practice, invite] = ['', '']
  const shotOn = (on: Page) => on.getByRole('region', { name: 'The shot in hand' })
  await test.step('on the other phone a practice round, with a shot in hand', async () => {
    await other.page.getByRole('link', { name: 'To all outings' }).click()
    await openPlain(other.page, false)
    await other.page.getByRole('link', { name: 'Your plan' }).click()
    await expect(shotOn(other.page).getByRole('textbox', { name: 'Distance, yards' })).toBeVisible()
    practice = other.page.url()
  })
  await test.step('a score under the Rules on the one takes it off the other, and says why', async () => {
    await page.getByRole('link', { name: 'To all outings' }).click()
    await openPlain(page, true)
    await page.getByText('Mine', { exact: true }).click()
    await tapScore(page, 'Alder', 5)
    invite = await readInviteLink(page)
    await expect(shotOn(other.page)).toContainText('Off, for you are in a round under the Rules')
    await expect(shotOn(other.page).getByRole('textbox')).toHaveCount(0)
    await axeClean(other.page, 'plan', 'shot in hand off, a round under the Rules on another phone')
  })
  await test.step('it stays off where the other follows that very round and knows no ball as its owner’s', async () => {
    await page.close()
    await other.page.goto(invite)
    await other.page.getByRole('textbox', { name: 'Your name' }).fill('Alder again')
    await other.page.getByRole('button', { name: 'Join the outing' }).click()
    await other.page.getByRole('button', { name: 'None of these' }).click()
    await expect(other.page.getByRole('link', { name: 'Your plan' })).toBeVisible()
    await other.page.goto(practice)
    await expect(shotOn(other.page)).toContainText('Off, for you are in a round under the Rules in another outing.')
  })
  await test.step('it is back once the player says that the round is over', async () => {
    await other.page.getByRole('button', { name: 'That round is over' }).click()
    await expect(other.page.getByText('Say so only when your round is finished')).toBeVisible()
    await other.page.getByRole('button', { name: 'It is over' }).click()
    await expect(shotOn(other.page).getByRole('textbox', { name: 'Distance, yards' })).toBeVisible()
  })
  noComplaints([phone, other])
  await server.stop()
})
