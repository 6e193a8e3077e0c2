import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'

/** The serious accessibility faults of what the page shows now, one line each; contrast 7:1 included. */
export async function seriousFaults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .options({ rules: { 'color-contrast-enhanced': { enabled: true } } })
    .analyze()
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}
