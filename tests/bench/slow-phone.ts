import type { CDPSession, Locator, Page } from '@playwright/test'

/** How much slower than this machine a golfer's phone is taken to be. */
const slowness = 6

/** A page that runs as slowly as a golfer's phone and is touched as by a finger. */
export interface SlowPhone {
  /** From now on. */
  readonly slowDown: () => Promise<void>
  /** One finger down and up in the middle of it. */
  readonly touch: (target: Locator) => Promise<void>
}

export async function slowPhoneOf(page: Page): Promise<SlowPhone> {
  const browser: CDPSession = await page.context().newCDPSession(page)
  await browser.send('Emulation.setTouchEmulationEnabled', { enabled: true })
  return {
    slowDown: async () => {
      await browser.send('Emulation.setCPUThrottlingRate', { rate: slowness })
    },
    touch: async target => {
      const box = await target.boundingBox()
      if (!box) throw new Error('what is to be touched is not on the page')
      const touchPoints = [{ x: box.x + box.width / 2, y: box.y + box.height / 2 }]
      await browser.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints })
      await browser.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
    },
  }
}
