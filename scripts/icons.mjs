// Draws client/public/icon.svg as the PNG files that the manifest names: npm run icons
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { findChromium } from './setup/chromium.mjs'
import { root } from './setup/places.mjs'

/** Sides in px: two for the manifest, one for the home screen of a phone that reads no manifest. */
const sides = [192, 512, 180]
const folder = join(root, 'client/public')
const executablePath = findChromium()
if (executablePath === null) throw new Error('No Chromium found; CHROMIUM_PATH names one.')
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] })
const svg = readFileSync(join(folder, 'icon.svg')).toString('base64')
for (const side of sides) {
  const page = await browser.newPage({ viewport: { width: side, height: side } })
  await page.setContent(
    `<body style="margin:0"><img src="data:image/svg+xml;base64,${svg}" width="${side}" height="${side}" style="display:block">`,
  )
  await page.locator('img').screenshot({ path: join(folder, `icon-${side}.png`) })
  await page.close()
}
await browser.close()
