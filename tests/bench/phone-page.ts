import { chromium, type Page } from '@playwright/test'
import { chromiumArgs, chromiumPath } from '#tests/browser/kit/chromium.ts'
import { fourBallAndPoints, startOuting, whenOnServer } from '#tests/browser/kit/golfer.ts'
import { openPhone, whenKept } from '#tests/browser/kit/round.ts'
import { startServer } from '#tests/browser/kit/server.ts'

/** A phone in Chromium with the built page on a hole of a new outing. */
export interface PhonePage {
  readonly page: Page
  readonly close: () => Promise<void>
}

/** Four players, a four-ball match and Stableford; on the 1st hole, its worker installed unless it is to have none. */
export async function openPhonePage({ hasWorker = true } = {}): Promise<PhonePage> {
  const server = await startServer()
  const browser = await chromium.launch({ executablePath: chromiumPath, args: [...chromiumArgs] })
  const { page } = await openPhone(browser, 'Alder', { hasWorker })
  await page.goto(server.url)
  if (hasWorker) await whenKept(page)
  await startOuting(page, fourBallAndPoints)
  await whenOnServer(page)
  return {
    page,
    close: async () => {
      await browser.close()
      await server.stop()
    },
  }
}
