import { expect, test } from '@playwright/test'
import { autumnDay } from '#tests/kit/plain-outing.ts'
import { axeClean } from './kit/axe.ts'
import { openTab, readInviteLink, tapScore } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { noComplaints } from './kit/round.ts'
import { openServed } from './kit/served.ts'

/** Everything but the last score: Rowan's 18th. */
const untilTheLast = {
  ...autumnDay,
  scores: autumnDay.scores.map(({ ball, holes }) => ({
    ball,
    holes: holes.map((score, at) => (ball === 'rowan' && at === 17 ? null : score)),
  })),
}

test('after the last score: how it came out, the card checked and certified, and the result sent on', async ({
  browser,
}) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, untilTheLast, 'Alder')
  await page.getByRole('link', { name: 'Your six targets' }).click()
  await page.getByRole('textbox', { name: 'Your cue' }).fill('Slow back')
  await page.getByRole('button', { name: 'To the hole' }).click()

  await test.step('what is open is said with the way to it', async () => {
    await page.getByRole('button', { name: 'Finish' }).click()
    await expect(page.getByRole('heading', { name: 'Still open' })).toBeVisible()
    await axeClean(page, 'finish', 'something open')
    await page.getByRole('link', { name: 'Rowan: nothing written for hole 18. To hole 18' }).click()
    await tapScore(page, 'Rowan', 5)
    await page.getByRole('button', { name: 'Finish' }).click()
  })

  await test.step('the last three is closed, and every game has its result', async () => {
    await expect(page.getByRole('heading', { name: 'All scores in' })).toBeVisible()
    await expect(page.getByText('Sixth three closed.')).toBeVisible()
    await expect(page.getByRole('region', { name: 'Four-ball match' }).getByRole('listitem')).toHaveText([
      'Birch & Rowan beat Alder & Cedar 4 & 2',
    ])
    await expect(page.getByRole('region', { name: 'Stableford' }).getByRole('listitem')).toHaveText([
      '1 Birch 37',
      '2 Rowan 36',
      '3 Alder 34',
      '4 Cedar 29',
    ])
    await axeClean(page, 'finish', 'own targets')
  })

  await test.step('certified one after the other on a phone that goes round and stays its owner’s', async () => {
    await page.getByRole('button', { name: 'Check the card' }).click()
    await expect(page.getByText('Every hole is written.')).toBeVisible()
    const certification = page.getByRole('region', { name: 'Certification' })
    for (const name of ['Alder', 'Birch', 'Cedar', 'Rowan']) {
      await certification.getByRole('group', { name: 'Who holds this phone' }).getByRole('radio', { name }).check()
      await certification.getByRole('button', { name: `Certify as ${name}` }).click()
      await expect(certification.getByRole('region', { name })).toContainText(`${name}: certified`)
    }
    await axeClean(page, 'card', 'certified by all')
    await openTab(page, 'Hole')
    await expect(page.getByRole('region', { name: 'Alder' }).getByText('you', { exact: true })).toBeVisible()
  })

  await test.step('with no share sheet and no clipboard the text stands there selected', async () => {
    await openTab(page, 'Card')
    const result = page.getByRole('region', { name: 'Result' })
    await expect(result.getByRole('button', { name: 'Send the result' })).toHaveCount(0)
    await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }))
    await result.getByRole('button', { name: 'Copy the result' }).click()
    await expect(result.getByRole('status')).toHaveText('The result is selected: copy it by hand.')
    expect(await page.evaluate(() => getSelection()?.toString())).toContain('Birch & Rowan beat Alder & Cedar 4 & 2')
  })

  await test.step('the share sheet is given the same text, and nothing private', async () => {
    const secret = (await readInviteLink(page)).split('/').at(-1) ?? ''
    await page.evaluate(() => {
      const given: ShareData[] = []
      Object.assign(window, { given })
      navigator.share = async data => void given.push(data ?? {})
      navigator.canShare = () => true
    })
    await openTab(page, 'Card')
    const result = page.getByRole('region', { name: 'Result' })
    await result.getByRole('button', { name: 'Send the result' }).click()
    const given = await page.evaluate(() => (window as unknown as { given: ShareData[] }).given)
    const text = await result.getByRole('textbox', { name: 'The result as text' }).inputValue()
    expect(given).toEqual([{ title: 'Autumn Day, Quillmoor, 10 October 2026', text }])
    expect(text).toContain('Rowan 83: −1, +1, level, level, −1, +1')
    for (const hidden of [secret, server.url, 'Slow back', 'http', 'target']) expect(text).not.toContain(hidden)
  })
  noComplaints([phone])
  await server.stop()
})
