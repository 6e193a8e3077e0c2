import { expect, type Locator, type Page } from '@playwright/test'
import { whenOnServer } from '#tests/browser/kit/golfer.ts'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { type BenchResult, quantile, rounded } from './figures.ts'
import type { TapTimes } from './in-page/tap-times.ts'
import { scriptInPage } from './in-page.ts'
import { openPhonePage } from './phone-page.ts'
import { type SlowPhone, slowPhoneOf } from './slow-phone.ts'

/** Played before anything counts: by then the page's code is compiled, and both have been touched. */
const warmUpHoles = 3
const lastHole = 18
const budget = { paintedP95: 3, savedP95Ms: 150 }
/** From one tap to the next; the page takes what is nearer than 150 ms for no thumb's. */
const restMs = 250

/**
 * A round of four, every score one tap on its key in the page of a slow phone, in touch with its server; before each tap
 * one on a bare React button in the same document. Both are measured by the same means, from the finger's lifting.
 */
export async function benchTap(): Promise<BenchResult> {
  const { page, close } = await openPhonePage()
  await page.evaluate(await scriptInPage('tap-page.tsx'))
  const phone = await slowPhoneOf(page)
  await phone.slowDown()
  const taps: { readonly ours: TapTimes; readonly bare: TapTimes }[] = []
  for (let hole = 1; hole <= lastHole; hole++) {
    await openHole(page, hole)
    for (const { name, strokes } of fourPlayers) {
      const bare = await tapBare(page, phone)
      taps.push({ bare, ours: await tapScore(page, phone, name, strokes[hole - 1]) })
    }
  }
  await close()
  return resultOf(taps.slice(warmUpHoles * fourPlayers.length))
}

/** The address names the hole; which screens lie between two holes is nothing to this measurement. */
async function openHole(page: Page, hole: number): Promise<void> {
  await page.evaluate(`location.hash = location.hash.replace(/hole.*$/, 'hole/${hole}')`)
  await expect(page.getByRole('heading', { name: `Hole ${hole}`, exact: true })).toBeVisible()
}

async function tapScore(page: Page, phone: SlowPhone, player: string, score: number | undefined): Promise<TapTimes> {
  const times = await tap(page, phone, page.getByRole('button', { name: `${player} ${score}`, exact: true }), true)
  await whenOnServer(page)
  return times
}

async function tapBare(page: Page, phone: SlowPhone): Promise<TapTimes> {
  const button = page.getByRole('button', { name: 'Bare', exact: true })
  return tap(page, phone, button, (await button.getAttribute('aria-pressed')) === 'false')
}

/** One touch on a key that is pressed by it, or let go. */
async function tap(page: Page, phone: SlowPhone, key: Locator, isPressed: boolean): Promise<TapTimes> {
  await key.scrollIntoViewIfNeeded()
  await page.waitForTimeout(restMs)
  const selector = `[aria-label="${await key.getAttribute('aria-label')}"][aria-pressed="${isPressed}"]`
  await page.evaluate(`bench.expect(${JSON.stringify(selector)})`)
  await phone.touch(key)
  return page.evaluate('bench.times()')
}

function resultOf(taps: readonly { readonly ours: TapTimes; readonly bare: TapTimes }[]): BenchResult {
  const saved = taps.map(({ ours }) => ours.saved ?? Number.NaN)
  const [ours, bare] = [taps.map(each => each.ours.painted), taps.map(({ bare }) => bare.painted)]
  const ratio = quantile(ours, 0.95) / quantile(bare, 0.95)
  const savedP95 = quantile(saved, 0.95)
  return {
    name: 'tap',
    ours: { ...figures('painted', ours), ...figures('saved', saved) },
    yardstick: figures('painted', bare),
    ratio: { paintedP95: rounded(ratio) },
    budget,
    holds: ratio <= budget.paintedP95 && savedP95 <= budget.savedP95Ms,
  }
}

const figures = (name: string, times: readonly number[]) => ({
  [`${name}MedianMs`]: rounded(quantile(times, 0.5)),
  [`${name}P95Ms`]: rounded(quantile(times, 0.95)),
})
