import { type Browser, expect, type Page } from '@playwright/test'
import { must } from '#core/values/assert.ts'
import { openFile } from '../browser/kit/outing-file.ts'
import { openPhone } from '../browser/kit/round.ts'
import { type Camera, whenLoaded } from './camera.ts'

/** What a story plays on: a browser, a server, and the camera that it shows its pages to. */
export interface Stage {
  readonly browser: Browser
  readonly url: string
  readonly show: Camera['show']
}

/** Plays one part of a round and shows the screens on the way. */
export type Story = (stage: Stage) => Promise<void>

/** A phone of its own on the first page. */
export async function openFirst({ browser, url }: Stage, name: string): Promise<Page> {
  const { page } = await openPhone(browser, name, { hasOutages: true })
  await page.goto(url)
  await expect(page.getByRole('link', { name: 'Start an outing' })).toBeVisible()
  return page
}

/** A phone of its own that has opened this outing. */
export async function openDay(stage: Stage, file: object, name = 'Alder'): Promise<Page> {
  const page = await openFirst(stage, name)
  await openFile(page, file, name)
  return page
}

/** To a screen of the outing that the page has open. */
export async function goTo(page: Page, screen: string): Promise<void> {
  const [, log] = must(/#\/o\/([^/]+)/.exec(page.url()), 'an outing is open')
  await goToAddress(page, `/o/${log}/${screen}`)
}

export async function goToAddress(page: Page, address: string): Promise<void> {
  await page.evaluate(to => {
    window.location.hash = to
  }, address)
  await whenLoaded(page)
}

export async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click()
}

/** Opens everything that lies behind a tap. */
export const openAll = (page: Page): Promise<void> =>
  page.locator('main details').evaluateAll(all => {
    for (const each of all as HTMLDetailsElement[]) each.open = true
  })
