import { readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { axeClean } from './kit/axe.ts'
import { choosePictures, picturesOfCodes } from './kit/codes.ts'
import { foot, goToHole, openTab, tapScore } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { noComplaints, openPhone, whenKept } from './kit/round.ts'
import { startServer } from './kit/server.ts'

const givenBy = async (page: Page, player: string) => {
  await openTab(page, 'Card')
  const part = page.getByRole('region', { name: 'Take a card home' })
  await part.getByRole('radio', { name: player }).check({ force: true })
  return part
}

const totalOn = (page: Page) => page.getByRole('table', { name: 'Hole by hole' }).getByRole('row', { name: /^Total/ })

test('a player takes their own card home by codes with no signal, reads it there, and takes it again corrected', async ({
  browser,
}) => {
  const server = await startServer()
  const alder = await openPhone(browser, 'Alder', { hasOutages: true })
  const birch = await openPhone(browser, 'Birch', { hasOutages: true })
  for (const { page } of [alder, birch]) {
    await page.goto(server.url)
    await whenKept(page)
  }
  await server.kill()
  for (const { page } of [alder, birch]) await page.reload()
  await openFile(alder.page, autumnDay, 'Alder')

  await test.step('the codes are read in any order, and the card is there', async () => {
    const part = await givenBy(alder.page, 'Birch')
    const pictures = await picturesOfCodes(part)
    await axeClean(alder.page, 'card', 'given by codes')
    expect(pictures.length).toBeLessThan(8)
    await choosePictures(birch.page, pictures.toReversed())
    await expect(birch.page.getByText('Autumn Day, Birch’s card, Quillmoor, 10 October 2026').first()).toBeVisible()
    await expect(totalOn(birch.page)).toContainText('78')
    await expect(birch.page.getByRole('columnheader', { name: 'Alder' })).toHaveCount(0)
    await axeClean(birch.page, 'card', 'taken home')
  })

  await test.step('it is on the list of that phone, and opens again with no signal', async () => {
    await birch.page.goto(`${server.url}/#/`)
    await birch.page.reload()
    await expect(birch.page.getByRole('button', { name: /^Play again/ })).toHaveCount(0)
    await birch.page.getByRole('link', { name: 'Autumn Day, Birch’s card' }).click()
    await openTab(birch.page, 'Board')
    await expect(birch.page.getByRole('region', { name: 'Stableford' }).getByRole('listitem')).toHaveText(/Birch.* 37$/)
    await openTab(birch.page, 'Hole')
    await expect(birch.page.getByRole('button', { name: /^Birch \d/ })).toHaveCount(0)
    await axeClean(birch.page, 'hole', 'a card taken home')
  })

  await test.step('the file has the same card, nobody else’s, and nothing that lets anybody in', async () => {
    const downloading = alder.page.waitForEvent('download')
    await alder.page
      .getByRole('region', { name: 'Take a card home' })
      .getByRole('link', { name: 'Save as a file' })
      .click()
    const text = readFileSync(await (await downloading).path(), 'utf8')
    for (const hidden of ['alder', 'cedar', 'rowan', 'invite', 'secret', 'hash']) {
      expect(text.toLowerCase()).not.toContain(hidden)
    }
  })

  await test.step('a corrected card takes the place of the first, and no server is asked about it', async () => {
    await goToHole(alder.page, 18)
    await tapScore(alder.page, 'Birch', 5)
    const pictures = await picturesOfCodes(await givenBy(alder.page, 'Birch'))
    await birch.page.goto(`${server.url}/#/`)
    await choosePictures(birch.page, pictures)
    await expect(totalOn(birch.page)).toContainText('79')
    await server.start()
    await birch.page.goto(`${server.url}/#/`)
    await birch.page.reload()
    const list = birch.page.getByRole('region', { name: 'On this phone' }).getByRole('listitem')
    await expect(list).toHaveText(['Autumn Day, Birch’s card Quillmoor · 10 October 2026'])
    await list.getByRole('link').click()
    await expect(foot(birch.page)).toHaveText('on this phonea card taken home, to be read')
  })
  noComplaints([alder, birch])
  await server.stop()
})
