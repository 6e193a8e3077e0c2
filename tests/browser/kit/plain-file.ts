import { expect, type Page } from '@playwright/test'
import { plainWith } from '../../kit/plain-outing.ts'

/** An outing at Quillmoor with the lengths of its holes, opened from a file that somebody wrote. */
export async function openPlain(page: Page, rules: boolean): Promise<void> {
  const fromFile = page.getByRole('region', { name: 'Open from a file' })
  await fromFile.getByRole('textbox', { name: 'Your name' }).fill('Alder')
  const text = JSON.stringify(plainWith({ rules, scores: [] }))
  const file = { name: 'autumn-day.json', mimeType: 'application/json', buffer: Buffer.from(text) }
  await page.getByLabel('Choose a file').setInputFiles(file)
  await expect(page.getByRole('region', { name: 'Alder', exact: true })).toBeVisible()
}
