import { readdirSync, readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import { goToHole, openTab, whenOnServer } from './kit/golfer.ts'
import { openPlain } from './kit/plain-file.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'
import { createFinger } from './kit/taps.ts'

async function fillBag(page: Page): Promise<void> {
  const carries = { Driver: '215', '3 wood': '195', '7 iron': '145', 'Sand wedge': '85' }
  for (const [club, carry] of Object.entries(carries)) {
    await page.getByRole('textbox', { name: `${club}, carry` }).fill(carry)
  }
  await page.getByRole('textbox', { name: 'Your lay-up number, yards' }).fill('100')
}

test('a bag in a few figures, a lay-up said before the hole, one answer for the shot in hand, all of it private', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await test.step('three numbers fill the bag; the rest is estimated and says so', async () => {
    await page.getByRole('link', { name: 'Carries, lay-up number, habits' }).click()
    await expect(page.getByText('Three numbers are enough. To go: 3.')).toBeVisible()
    await axeClean(page, 'bag', 'no number yet')
    await fillBag(page)
    await expect(page.getByRole('listitem').filter({ hasText: '8 iron' })).toContainText(/about \d+, estimated/)
    const foot = page.getByRole('status').filter({ hasText: 'on this phone' })
    await expect(foot).toContainText('nowhere else')
    await expect(foot).not.toContainText('server')
    await axeClean(page, 'bag', 'the rest estimated')
  })

  await test.step('a change is taken back, and what stands is there after a reload', async () => {
    await page.getByRole('textbox', { name: '7 iron, carry' }).fill('155')
    await page.getByRole('button', { name: 'Undo the last change' }).click()
    await expect(page.getByRole('textbox', { name: '7 iron, carry' })).toHaveValue('145')
    await page.reload()
    await expect(page.getByRole('textbox', { name: '7 iron, carry' })).toHaveValue('145')
    await expect(page.getByRole('textbox', { name: 'Your lay-up number, yards' })).toHaveValue('100')
    await page.getByRole('link', { name: 'To all outings' }).click()
    await expect(page.getByText('No outing on this phone yet.')).toBeVisible()
  })

  await test.step('behind a tap on a phone that scores for others, in one line on the player’s own', async () => {
    await openPlain(page, false)
    await goToHole(page, 2)
    await expect(page.getByRole('link', { name: 'Your plan' })).toBeVisible()
    await expect(page.getByText('Lay up')).toHaveCount(0)
    await page.getByText('Mine', { exact: true }).click()
    // Quillmoor's second is a par 5 of 492 yards: the driver leaves 277, and the 3 wood carries 195.
    await expect(page.getByRole('link', { name: 'Lay up: 177 leaves 100' })).toBeVisible()
    await axeClean(page, 'hole', 'own score alone, the others in a line')
  })

  await test.step('a distance and a pin: one answer in at most three taps and the figure', async () => {
    const finger = createFinger()
    const answer = page.getByRole('region', { name: 'The shot in hand' }).getByRole('status')
    const distance = page.getByRole('textbox', { name: 'Distance, yards' })
    await finger.tap(page.getByRole('link', { name: 'Lay up: 177 leaves 100' }))
    await expect(page.getByText('Driver (215) leaves 277: no club of yours reaches.')).toBeVisible()
    await finger.tap(distance)
    await distance.fill('118')
    await finger.tap(page.getByText('Front', { exact: true }))
    // Common practice: five past a front pin, five short of a back one.
    await expect(answer).toContainText('123')
    expect(finger.taps()).toBeLessThanOrEqual(3)
    await page.getByText('Back', { exact: true }).click()
    await expect(answer).toContainText('113')
    for (const far of ['140', '175']) {
      await distance.fill(far)
      for (const pin of ['Front', 'Middle', 'Back']) {
        await page.getByText(pin, { exact: true }).click()
        await expect(answer).toContainText('Middle of the green')
      }
    }
    await distance.fill('245')
    await expect(answer).toContainText('Lay up: 145')
    await expect(page.getByText('shout “Fore!”')).toBeVisible()
    await axeClean(page, 'plan', 'lay-up and a shot to the green')
    await page.getByText('Trees', { exact: true }).click()
    await expect(answer).toContainText('4 hybrid')
    await page.getByRole('button', { name: 'Does not clear: more loft' }).click()
    await expect(answer).toContainText('5 iron')
    await expect(answer.getByRole('listitem')).toHaveText([
      'Grip down.',
      'Ball back.',
      'Hands ahead.',
      'Weight forward.',
      'Finish low.',
      'Out first,',
      'then as far down as is safe.',
    ])
    await expect(page.getByText('Never towards people')).toBeVisible()
    await axeClean(page, 'plan', 'out of the trees')
  })

  await test.step('no file and no server has any of it', async () => {
    await expect(page.getByRole('status').filter({ hasText: 'nowhere else' })).not.toContainText('server')
    await page.getByRole('link', { name: 'To hole 2' }).click()
    await whenOnServer(page)
    await openTab(page, 'Card')
    const own = /habit|"club\/|favourite|carry|lay-up|iron-7/
    for (const form of ['whole', 'plain'] as const) {
      const downloading = page.waitForEvent('download')
      await page.getByRole('link', { name: `Download the outing file, ${form}` }).click()
      expect(readFileSync(await (await downloading).path(), 'utf8')).not.toMatch(own)
    }
    const files = readdirSync(server.dataDir).filter(name => name.startsWith('six-threes.db'))
    const stored = files.map(name => readFileSync(`${server.dataDir}/${name}`, 'latin1')).join('')
    expect(stored).toContain('Autumn Day')
    expect(stored).not.toMatch(own)
  })
  noComplaints([phone])
  await server.stop()
})

test('under the Rules the shot in hand is off and says why; the plan for the hole stays', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await page.getByRole('link', { name: 'Carries, lay-up number, habits' }).click()
  await fillBag(page)
  await page.getByText('Six threes', { exact: true }).click()
  await expect(page.getByRole('checkbox', { name: 'Six threes' })).not.toBeChecked()
  await axeClean(page, 'bag', 'habits off')
  await page.getByRole('link', { name: 'To all outings' }).click()
  await openPlain(page, true)
  await goToHole(page, 13)
  await page.getByText('Mine', { exact: true }).click()
  // A habit that is switched off asks nothing any more.
  await expect(page.getByRole('link', { name: 'Your six targets' })).toHaveCount(0)
  await page.getByRole('link', { name: 'Lay up: 186 leaves 100' }).click()
  const shot = page.getByRole('region', { name: 'The shot in hand' })
  await expect(shot).toContainText('Rule 4.3 allows no advice')
  await expect(shot.getByRole('textbox')).toHaveCount(0)
  await expect(page.getByText('Lay up to 100, every time.')).toBeVisible()
  await axeClean(page, 'plan', 'shot in hand off under the Rules')

  await page.getByRole('link', { name: 'My bag' }).click()
  await axeClean(page, 'bag-from', 'opened from a plan')
  await page.getByRole('textbox', { name: 'Your lay-up number, yards' }).fill('95')
  await page.getByRole('link', { name: 'To the plan' }).click()
  await expect(page.getByText('a shot of 191 leaves your 95.')).toBeVisible()
  noComplaints([phone])
  await server.stop()
})
