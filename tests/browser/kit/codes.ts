import { expect, type Locator, type Page } from '@playwright/test'

/** A picture of every code that this part of the page shows after its button, in their order. */
export async function picturesOfCodes(part: Locator): Promise<Buffer[]> {
  await part.getByRole('button', { name: 'Show the codes' }).click()
  const pictures: Buffer[] = []
  const code = part.getByRole('img', { name: /^Code \d+ of \d+$/ })
  const of = Number(/of (\d+)/.exec((await code.getAttribute('aria-label')) ?? '')?.[1])
  for (let place = 1; place <= of; place++) {
    const shown = part.getByRole('img', { name: `Code ${place} of ${of}` })
    await expect(shown).toBeVisible()
    pictures.push(await shown.screenshot())
    if (place < of) await part.getByRole('button', { name: 'Next code' }).click()
  }
  return pictures
}

/** The pictures as a phone that photographed them chooses them. */
export const choosePictures = (page: Page, pictures: readonly Buffer[]): Promise<void> =>
  page
    .getByLabel('Choose pictures of the codes, or the file')
    .setInputFiles(pictures.map((buffer, place) => ({ name: `code-${place}.png`, mimeType: 'image/png', buffer })))
