import { readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { axeClean } from './kit/axe.ts'
import { pressOn } from './kit/keyboard.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'
import { createFinger } from './kit/taps.ts'

const number = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })
const row = (page: Page, club: string) => page.getByRole('listitem').filter({ has: number(page, `${club}, carry`) })
const more = (page: Page) => page.getByRole('region', { name: 'More about a club' })

async function openBag(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Carries, lay-up number, habits' }).click()
  await expect(page.getByRole('heading', { name: 'My bag' })).toBeVisible()
}

test('shots that were measured move a number, a spread and part swings are said; all of it is there after a reload', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await openBag(page)
  await test.step('three numbers cost what their figures and three taps do', async () => {
    const finger = createFinger()
    await finger.type(number(page, 'Driver, carry'), '215')
    await finger.type(number(page, '7 iron, carry'), '150')
    await finger.type(number(page, 'Sand wedge, carry'), '85')
    await expect(row(page, '8 iron')).toContainText(/about \d+, estimated/)
    expect(finger.taps()).toBe(11)
  })

  await test.step('single shots', async () => {
    await more(page).getByRole('combobox', { name: 'Which club' }).selectOption('7 iron')
    for (const carry of ['140', '138', '142']) {
      await number(page, 'One carry, yards').fill(carry)
      await page.keyboard.press('Enter')
      await expect(page.getByRole('button', { name: `Take away ${carry}` })).toBeVisible()
      await expect(number(page, 'One carry, yards')).toBeFocused()
    }
    await expect(more(page).getByRole('status')).toHaveText('3 shots: mean 140, spread 2. Used: 144.')
    await expect(row(page, '7 iron')).toContainText('Used: 144.')
    await expect(number(page, '7 iron, carry')).toHaveValue('150')
    await page.getByRole('button', { name: 'Take away 138' }).click()
    await expect(more(page).getByRole('status')).toContainText('2 shots: mean 141')
    await page.getByRole('button', { name: 'Undo the last change' }).click()
    await expect(more(page).getByRole('status')).toContainText('3 shots: mean 140')
    await number(page, 'One carry, yards').fill('3')
    await page.getByRole('button', { name: 'Put it in' }).click()
    await expect(page.getByText('From 5 to 450')).toBeVisible()
    await axeClean(page, 'bag', 'shots measured')
  })

  await test.step('a spread that was known, averages, and part swings of a wedge', async () => {
    await more(page).getByRole('combobox', { name: 'Which club' }).selectOption('Sand wedge')
    await number(page, 'Short or long of it, yards').fill('6')
    await number(page, 'From so many shots').fill('25')
    await expect(more(page).getByRole('status')).toHaveText('25 shots: mean 85, spread 6. Used: 85.')
    await number(page, 'Half swing, yards').fill('45')
    await number(page, 'Three-quarter swing, yards').fill('65')
    await page.getByText('averages, mishits in', { exact: true }).click()
    await axeClean(page, 'bag', 'part swings of a wedge')
    await page.reload()
    await expect(page.getByRole('radio', { name: 'averages, mishits in' })).toBeChecked()
    await more(page).getByRole('combobox', { name: 'Which club' }).selectOption('Sand wedge')
    await expect(number(page, 'Half swing, yards')).toHaveValue('45')
    await expect(number(page, 'From so many shots')).toHaveValue('25')
    await page.getByText('metres', { exact: true }).click()
    // International yard and pound agreement, 1959: 65 yards are 59.4 metres.
    await expect(number(page, 'Three-quarter swing, metres')).toHaveValue('59')
  })
  noComplaints([phone])
  await server.stop()
})

test('the bag is its owner’s: as a file to keep, and deleted for good on every page of the phone', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await openBag(page)
  // Nothing was said yet: there is nothing to keep or to delete.
  const own = page.getByRole('region', { name: 'Yours to keep or to delete' })
  await expect(page.getByRole('button', { name: 'Make my code' })).toBeVisible()
  await expect(own).toHaveCount(0)
  for (const [club, carry] of [
    ['Driver', '215'],
    ['7 iron', '145'],
    ['Sand wedge', '85'],
  ] as const) {
    await number(page, `${club}, carry`).fill(carry)
  }
  const other = await phone.context.newPage()
  await other.goto(page.url())
  await expect(number(other, '7 iron, carry')).toHaveValue('145')

  const downloading = page.waitForEvent('download')
  await page.getByRole('link', { name: 'My bag as a file' }).click()
  const file = JSON.parse(readFileSync(await (await downloading).path(), 'utf8'))
  expect(file).toMatchObject({ sixThrees: 'player', version: 1, unit: 'yards', strike: 'good-strike' })
  expect(file.clubs).toContainEqual(
    expect.objectContaining({ club: 'iron-7', carry: 145, used: 145, isEstimated: false, measured: [] }),
  )

  await pressOn(page, page.getByRole('button', { name: 'Delete my bag from this phone' }))
  await expect(page.getByText('Nobody has a copy, and nobody can undo it.')).toBeVisible()
  await axeClean(page, 'bag', 'deleting it asked about')
  await page.keyboard.press('Enter')
  await expect(page.getByText('Deleted. Nothing of your bag is left on this phone.')).toBeVisible()
  await expect(number(page, '7 iron, carry')).toHaveValue('')
  await axeClean(page, 'bag', 'deleted')
  await expect(own.getByRole('link')).toHaveCount(0)
  await expect(number(other, '7 iron, carry')).toHaveValue('')
  const left = await page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('six-threes-player')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const tables = opening.result.transaction(['logs', 'ops'])
          const counts = ['logs', 'ops'].map(name => tables.objectStore(name).count())
          tables.oncomplete = () => {
            opening.result.close()
            resolve(counts.reduce((sum, { result }) => sum + result, 0))
          }
        }
      }),
  )
  expect(left).toBe(0)
  // A new bag begins like the first one, on either page.
  await number(other, '7 iron, carry').fill('150')
  await expect(number(page, '7 iron, carry')).toHaveValue('150')
  await page.reload()
  await expect(number(page, '7 iron, carry')).toHaveValue('150')
  noComplaints([phone])
  await server.stop()
})
