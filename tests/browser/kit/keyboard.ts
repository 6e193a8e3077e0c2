import { expect, type Locator, type Page } from '@playwright/test'

/** What has the focus, as it is heard; and whether it can be seen to have it. */
async function focused(page: Page): Promise<{ readonly name: string; readonly isSeen: boolean }> {
  return page.evaluate(() => {
    const element = document.activeElement as HTMLElement | null
    if (!element || element === document.body) return { name: '', isSeen: true }
    // A radio is drawn as its label.
    const drawn = element instanceof HTMLInputElement && element.type === 'radio' ? element.closest('label') : element
    const { outlineStyle, outlineWidth } = getComputedStyle(drawn ?? element)
    const name = element.getAttribute('aria-label') ?? drawn?.textContent ?? ''
    return { name: name.trim(), isSeen: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2 }
  })
}

/** So many times Tab is pressed before a page counts as a trap. */
const mostTabs = 120

/** Goes to a control by Tab alone; everything on the way must be seen to have the focus. Gives what was passed. */
export async function tabTo(page: Page, target: Locator): Promise<readonly string[]> {
  const passed: string[] = []
  for (let n = 0; n < mostTabs; n++) {
    await page.keyboard.press('Tab')
    const { name, isSeen } = await focused(page)
    expect(isSeen, `the focus on “${name}” is seen`).toBe(true)
    passed.push(name)
    if (await target.evaluate(element => element === document.activeElement)) return passed
  }
  throw new Error(`not reached by Tab: ${passed.join(' | ')}`)
}

export async function pressOn(page: Page, target: Locator, key: 'Enter' | 'Space' = 'Enter'): Promise<void> {
  await tabTo(page, target)
  await page.keyboard.press(key)
}
