import { expect, type Page } from '@playwright/test'

/** Opens a plain outing file on the first page, under this name. */
export async function openFile(page: Page, file: object, name: string): Promise<void> {
  const part = page.getByRole('region', { name: 'Open from a file' })
  await part.getByLabel('Your name').fill(name)
  const buffer = Buffer.from(JSON.stringify(file))
  await part.getByLabel('Choose a file').setInputFiles({ name: 'day.json', mimeType: 'application/json', buffer })
  await expect(page.getByRole('navigation', { name: 'Parts of the outing' })).toBeVisible()
}
