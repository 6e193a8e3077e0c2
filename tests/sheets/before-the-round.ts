import { expect, type Page } from '@playwright/test'
import { fourBallAndPoints, startOuting, tapScore } from '../browser/kit/golfer.ts'
import { fourPlayers } from '../kit/quillmoor.ts'
import { goToAddress, openAll, openFirst, press, type Story } from './stage.ts'

export async function fillBag(page: Page): Promise<void> {
  const carries = { Driver: '215', '3 wood': '195', '7 iron': '145', 'Sand wedge': '85' }
  for (const [club, carry] of Object.entries(carries)) {
    await page.getByRole('textbox', { name: `${club}, carry` }).fill(carry)
  }
  await page.getByRole('textbox', { name: 'Your lay-up number, yards' }).fill('100')
}

/** A phone that has never seen an outing, and addresses that lead nowhere. */
export const newPhone: Story = async stage => {
  const page = await openFirst(stage, 'Alder')
  await stage.show(page, 'First page, no outing yet', { window: true })
  await goToAddress(page, '/join')
  await stage.show(page, 'Join by three words')
  await page.getByRole('textbox', { name: 'The three words' }).fill('no such words')
  await page.getByRole('textbox', { name: 'Your name' }).fill('Birch')
  await press(page, 'Ask to be let in')
  await expect(page.getByRole('alert').filter({ hasText: 'No such words' })).toBeVisible()
  await stage.show(page, 'Join, wrong words')
  await goToAddress(page, '/join/what/is/this')
  await expect(page.getByText('This is not an invite link.')).toBeVisible()
  await stage.show(page, 'Join, wrong link')
  await goToAddress(page, '/o/nosuchouting/hole')
  await stage.show(page, 'An outing that is not on this phone')
  await goToAddress(page, '/no/such/page')
  await stage.show(page, 'An address that leads nowhere')
  await goToAddress(page, '/bag')
  await stage.show(page, 'Bag, empty')
  await fillBag(page)
  await stage.show(page, 'Bag, four numbers', { window: true })
  await press(page, 'Make my code')
  await press(page, 'Show my code')
  await expect(page.getByRole('textbox', { name: 'Your own link' })).toHaveValue(/own/)
  await stage.show(page, 'Bag, its code shown')
  await goToAddress(page, '/own/what/is/this')
  await expect(page.getByRole('alert')).toBeVisible()
  await stage.show(page, 'A bag by a code that is none')
}

/** The first tee: course, players, games; what is missing; the same again a week later. */
export const firstTee: Story = async stage => {
  const page = await openFirst(stage, 'Alder')
  await goToAddress(page, '/start')
  await stage.show(page, 'Start an outing', { window: true })
  await press(page, 'Start the outing')
  await expect(page.getByText('Not started yet. Nothing is lost:')).toBeVisible()
  await stage.show(page, 'Start, what is missing')
  await page.goto(stage.url)
  await startOuting(page, fourBallAndPoints)
  await stage.show(page, 'First tee, no score yet', { window: true })
  await tapScore(page, 'Alder', fourPlayers[0]?.strokes[0] ?? 0)
  await page.goto(`${stage.url}/#/`)
  await expect(page.getByRole('button', { name: 'Play again: Quillmoor' })).toBeVisible()
  await stage.show(page, 'First page, one outing', { window: true })
  await page.getByRole('button', { name: 'Play again: Quillmoor' }).click()
  await expect(page.getByText('Quillmoor, 18 holes, par 72')).toBeVisible()
  await stage.show(page, 'Start again', { window: true })
  await openAll(page)
  await stage.show(page, 'Start again, all open')
}
