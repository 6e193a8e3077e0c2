import { type Browser, type BrowserContext, expect, type Page } from '@playwright/test'
import { isNetworkComplaint, watchConsole } from './console.ts'

export const phoneSize = { width: 390, height: 844 } as const

/** A phone of its own: own storage, own page, and what the page has complained of. */
export interface Phone {
  readonly name: string
  readonly page: Page
  readonly context: BrowserContext
  readonly complaints: readonly string[]
}

/**
 * With `hasOutages` what the browser itself logs while there is no network is no complaint of the page; without `hasWorker`
 * nothing keeps the page on the phone.
 */
export async function openPhone(
  browser: Browser,
  name: string,
  { hasOutages = false, hasWorker = true } = {},
): Promise<Phone> {
  const serviceWorkers = hasWorker ? 'allow' : 'block'
  const context = await browser.newContext({ viewport: phoneSize, acceptDownloads: true, serviceWorkers })
  const page = await context.newPage()
  const complaints = watchConsole(page, text => hasOutages && isNetworkComplaint(text))
  return { name, page, context, complaints }
}

/** Resolves once the page's worker holds what it needs to open with no signal. */
export const whenKept = (page: Page): Promise<null> =>
  // As text: the measurements use it too, and are compiled without the page's names.
  page.evaluate('navigator.serviceWorker.ready.then(() => null)')

export function noComplaints(phones: readonly Phone[]): void {
  expect(phones.flatMap(({ name, complaints }) => complaints.map(text => `${name}: ${text}`))).toEqual([])
}
