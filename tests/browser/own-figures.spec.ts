import { expect, type Page, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import { goToHole } from './kit/golfer.ts'
import { openPlain } from './kit/plain-file.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

const carries = { Driver: '215', '3 wood': '195', '7 iron': '145', 'Sand wedge': '85' }

const numbersSay = (page: Page) => page.getByRole('region', { name: 'What the numbers say' })
const index = (page: Page) => page.getByRole('textbox', { name: 'Handicap Index' })

test('with three carries and a Handicap Index the numbers answer for each habit, and what is typed stays', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  const says = numbersSay(page)
  await test.step('what is missing is said', async () => {
    await page.getByRole('link', { name: 'Carries, lay-up number, habits' }).click()
    await expect(says).toContainText('Needs three carries in your bag.')
    for (const [club, carry] of Object.entries(carries)) {
      await page.getByRole('textbox', { name: `${club}, carry` }).fill(carry)
    }
    await expect(says).toContainText('Put in your Handicap Index')
    await index(page).fill('61')
    await index(page).blur()
    await expect(says).toContainText('From +10 to 54, such as 12.4 or +1.3.')
    await axeClean(page, 'bag', 'an Index out of range')
  })

  await test.step('each habit has its answer, in strokes for ten shots', async () => {
    await index(page).fill('18')
    await says.getByText('Men’s', { exact: true }).click()
    await expect(says).toContainText('Choose your lay-up number, and it is held against others.')
    await page.getByRole('textbox', { name: 'Your lay-up number, yards' }).fill('100')
    // Broadie's tables: nearer is worth more, and the driver more than less club, on open ground.
    await expect(says).toContainText('Another number: clearly better')
    await expect(says).toContainText('The driver: clearly better')
    await expect(says).toContainText('The middle: slightly better')
    await expect(says.getByText('An assumption of our own carries this').first()).toBeVisible()
    await expect(says.getByText('Being worked out …')).toHaveCount(0)
    await axeClean(page, 'bag', 'habits held against the numbers')
  })

  await test.step('it is there after a reload, and another unit asks the same', async () => {
    await page.reload()
    await expect(index(page)).toHaveValue('18.0')
    await expect(page.getByRole('radio', { name: 'Men’s', exact: true })).toBeChecked()
    await page.getByText('metres', { exact: true }).click()
    await expect(says).toContainText('Off the tee of an open par 4 of 350 metres.')
    await expect(says).toContainText('The driver: clearly better')
  })
  noComplaints([phone])
  await server.stop()
})

test('the plan of a hole has its figures, under the Rules too, and counts what is drawn on it', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  const says = numbersSay(page)
  await page.getByRole('link', { name: 'Carries, lay-up number, habits' }).click()
  for (const [club, carry] of Object.entries(carries)) {
    await page.getByRole('textbox', { name: `${club}, carry` }).fill(carry)
  }
  await page.getByRole('link', { name: 'To all outings' }).click()
  await openPlain(page, true)
  await goToHole(page, 2)
  await page.getByText('Mine', { exact: true }).click()
  await test.step('without an Index it asks for one, and the habits’ own line stays', async () => {
    await page.getByRole('link', { name: 'Out of reach: 277 left' }).click()
    await expect(page.getByText('Driver (215) leaves 277: no club of yours reaches.')).toBeVisible()
    await expect(says).toContainText('Put in your Handicap Index in your bag')
    await page.getByRole('link', { name: 'My bag' }).click()
    await index(page).fill('18')
    await says.getByText('Men’s', { exact: true }).click()
    await page.getByRole('link', { name: 'To the plan' }).click()
  })

  await test.step('by length and par: the tee shot, what it leaves, what the hole is worth', async () => {
    await expect(says).toContainText('Bogey is level here')
    await expect(says).toContainText('Off the tee: Driver, down the line.')
    await expect(says).toContainText('That leaves about 257, out of reach.')
    await expect(says.getByRole('img')).toHaveAccessibleName(/^From left to right: \d+ in the rough/)
    await expect(says).toContainText(/Ten tee shots: \d+ of 10 in the rough, \d+ on the fairway\./)
    await expect(page.getByRole('region', { name: 'The shot in hand' })).toContainText('Rule 4.3 allows no advice')
    await axeClean(page, 'plan', 'figures by length and par')
  })

  await test.step('water that is drawn moves the aim', async () => {
    await says.getByRole('link', { name: 'Draw what lies on this hole' }).click()
    await page.getByRole('button', { name: 'Water', exact: true }).click()
    await page.getByRole('button', { name: 'right of the line', exact: true }).click()
    const begins = page.getByRole('group', { name: 'From the tee to where it begins', exact: true })
    await begins.getByRole('button', { name: '200', exact: true }).click()
    await page.getByRole('link', { name: 'To the plan' }).click()
    await expect(says).toContainText('Trouble: water right, 200 to')
    await expect(says).toContainText('left of the line.')
    await axeClean(page, 'plan', 'figures with what is drawn')
  })
  noComplaints([phone])
  await server.stop()
})
