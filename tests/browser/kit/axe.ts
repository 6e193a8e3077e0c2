import { expect, type Page, test } from '@playwright/test'
import axe from 'axe-core'
import { routeOf, type Screen, type StateOf } from './screen-states.ts'
import { visitName, visitType } from './visit-name.ts'

const looks = { day: 'light', night: 'dark' } as const

/**
 * A state of a screen has no accessibility fault, neither by day nor by night, and counts as looked at. Motion is off
 * for it: a colour on its way to another is no fault.
 */
export async function axeClean<S extends Screen>(page: Page, screen: S, state: StateOf<S>): Promise<void> {
  const where = visitName(screen, state)
  expect(new URL(page.url()).hash.slice(1) || '/', where).toMatch(routeOf(screen))
  for (const look of ['night', 'day'] as const) {
    await page.emulateMedia({ colorScheme: looks[look], reducedMotion: 'reduce' })
    expect(await faultsOf(page), `${where}, by ${look}`).toEqual([])
  }
  test.info().annotations.push({ type: visitType, description: where })
}

/** The accessibility faults of what the page shows now, one line each; contrast 7:1 included. */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  // The page keeps it until it is loaded again.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { axe: tester } = window as unknown as { readonly axe: typeof axe }
    const { violations } = await tester.run(document, {
      rules: { 'color-contrast-enhanced': { enabled: true } },
      resultTypes: ['violations'],
    })
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
  })
}
