import { expect, type Page, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
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
