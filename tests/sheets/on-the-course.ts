import { expect, type Page } from '@playwright/test'
import { chosenKey, heldQuestion, readInviteLink, tapKey, tapScore, whenOnServer } from '../browser/kit/golfer.ts'
import { openFile } from '../browser/kit/outing-file.ts'
import { openPhone } from '../browser/kit/round.ts'
import { fillBag } from './before-the-round.ts'
import { dayUpTo } from './days.ts'
import { goTo, goToAddress, openDay, openFirst, press, type Stage, type Story } from './stage.ts'

/** Hole after hole on a phone that scores for all. */
export const round: Story = async stage => {
  const page = await openDay(stage, dayUpTo(7))
  await goTo(page, 'hole/8')
  await stage.show(page, 'Hole 8, nothing yet', { window: true })
  await tapScore(page, 'Alder', 6)
  await tapScore(page, 'Birch', 5)
  await page.getByRole('button', { name: 'Cedar more', exact: true }).click()
  await stage.show(page, 'Hole 8, two scores in, more keys', { window: true })
  await page.getByRole('button', { name: 'Cedar back to level', exact: true }).click()
  await press(page, 'More on this hole')
  await expect(page.getByRole('region', { name: 'Games from here on' })).toBeVisible()
  await stage.show(page, 'Hole 8, more on this hole')
  await goTo(page, 'hole/2')
  await tapKey(page, 'Rowan', 5)
  await expect(heldQuestion(page)).toBeVisible()
  await stage.show(page, 'A hole that was left: asked', { window: true })
  await press(page, 'Leave out')
  await press(page, 'Lock the page')
  await stage.show(page, 'Locked', { window: true })
  await page.getByRole('button', { name: 'Unlock: 1, then 2 at the foot' }).click()
  await page.getByRole('button', { name: '2: unlock' }).click()
  await goTo(page, 'reset/2')
  await stage.show(page, 'Reset after the second three', { window: true })
}

/** A phone that is its player's own: targets, plan, bag, the shot in hand. */
export const ownPlan: Story = async stage => {
  const page = await openFirst(stage, 'Alder')
  await goToAddress(page, '/bag')
  await fillBag(page)
  await goToAddress(page, '/')
  await openFile(page, dayUpTo(7), 'Alder')
  await goTo(page, 'targets')
  await page.getByRole('textbox', { name: 'Your cue' }).fill('Middle of every green.')
  await stage.show(page, 'Targets and cue')
  await goTo(page, 'hole/8')
  await page.getByText('Mine', { exact: true }).click()
  await expect(page.getByRole('link', { name: /^Lay up/ })).toBeVisible()
  await stage.show(page, 'Hole 8, own score only', { window: true })
  await goTo(page, 'plan/8/1')
  await page.getByRole('textbox', { name: 'Distance, yards' }).fill('118')
  await page.getByText('Front', { exact: true }).click()
  await stage.show(page, 'Plan, the shot in hand', { window: true })
  await page.getByText('Trees', { exact: true }).click()
  await stage.show(page, 'Plan, in the trees')
  await goTo(page, 'bag/8/1')
  await stage.show(page, 'Bag, from the plan')
  await goTo(page, 'sketch/8')
  await stage.show(page, 'Sketch, nothing drawn')
  for (const name of ['24', 'Bunker', 'left of the green', 'Fairway', 'Water', 'right of the line']) {
    await page.getByRole('button', { name, exact: true }).first().click()
  }
  await expect(page.getByText('Water right of the line:')).toBeVisible()
  await stage.show(page, 'Sketch, a shape opened')
  await goTo(page, 'reset/2')
  await stage.show(page, 'Reset, own score only', { window: true })
}

/** Two phones that could not hear each other wrote two scores for one ball. */
async function withTwoScores(stage: Stage): Promise<{ readonly alder: Page; readonly birch: Page }> {
  const alder = await openDay(stage, dayUpTo(7))
  await whenOnServer(alder)
  const { page: birch, context } = await openPhone(stage.browser, 'Birch', { hasOutages: true })
  await birch.goto(await readInviteLink(alder))
  await birch.getByRole('textbox', { name: 'Your name' }).fill('Birch')
  await stage.show(birch, 'Join, by a link')
  await press(birch, 'Join the outing')
  await whenOnServer(birch)
  await context.setOffline(true)
  for (const [page, score] of [
    [birch, 5],
    [alder, 6],
  ] as const) {
    await goTo(page, 'hole/8')
    await tapScore(page, 'Rowan', score)
  }
  await whenOnServer(alder)
  await expect(birch.getByText('1 to send')).toBeVisible()
  await stage.show(birch, 'Hole 8 with no signal', { window: true })
  await context.setOffline(false)
  await whenOnServer(birch)
  await expect(alder.getByText('two scores').first()).toBeVisible()
  return { alder, birch }
}

/** Two scores until one is chosen, wherever they show. */
export const twoScores: Story = async stage => {
  const { alder, birch } = await withTwoScores(stage)
  await stage.show(alder, 'Hole 8, two scores', { window: true })
  for (const tab of ['board', 'card', 'share', 'finish'] as const) {
    await goTo(alder, tab)
    await stage.show(alder, `${tab}, with two scores`, { window: true })
  }
  await goTo(birch, 'hole/8')
  await tapKey(birch, 'Rowan', 6)
  await expect(chosenKey(birch, 'Rowan', 6)).toBeVisible()
}
