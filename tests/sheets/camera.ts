import { join } from 'node:path'
import { expect, type Page } from '@playwright/test'
import { type Look, lookAt, looks, nameOfLook, whenDrawn, windowHeight } from './looks.ts'
import { screenAt } from './screens.ts'

/** One picture of a page in one look, from its top to its end. */
export interface Shot {
  readonly look: Look
  readonly name: string
  readonly file: string
  /** px */
  readonly height: number
  /** Where the window ends, px; null where the picture is the window. */
  readonly fold: number | null
  readonly findings: readonly string[]
}

/** What a story shows: the page as it is now, in every look. `window`: also as far as a phone shows it. */
export interface Camera {
  readonly show: (page: Page, name: string, options?: { readonly window?: boolean }) => Promise<void>
  readonly shots: readonly Shot[]
  readonly seen: ReadonlySet<string>
}

export function createCamera(folder: string, isWanted: (look: Look) => boolean): Camera {
  const shots: Shot[] = []
  const seen = new Set<string>()
  const show: Camera['show'] = async (page, name, { window = false } = {}) => {
    seen.add(screenAt(page.url()))
    const session = await page.context().newCDPSession(page)
    for (const look of looks.filter(isWanted)) {
      await lookAt(page, session, look)
      const take = async (part: string, height: number, fold: number | null): Promise<void> => {
        const file = join(folder, nameOfLook(look), `${String(shots.length).padStart(4, '0')}.png`)
        await page.screenshot({ path: file, animations: 'disabled' })
        shots.push({ look, name: `${name}${part}`, file, height, fold, findings: await findingsOn(page) })
      }
      const height = await page.evaluate(() => document.documentElement.scrollHeight)
      const whole = windowHeight[look.width]
      if (window && look.width < 400 && height > whole) await take(', window', whole, null)
      await page.setViewportSize({ width: look.width, height: Math.max(height, whole) })
      await whenDrawn(page)
      await take('', Math.max(height, whole), whole)
    }
    await page.setViewportSize({ width: 390, height: windowHeight[390] })
    await session.send('Page.setFontSizes', { fontSizes: { standard: 16 } })
    await session.detach()
  }
  return { show, shots, seen }
}

/**
 * What a measure sees at once: a page that scrolls sideways, words that are cut, targets and text that are too small.
 * No function in it has a name: the loader would hang its own on it, which the page does not know.
 */
async function findingsOn(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const found: [what: string, where: Element | null][] = []
    const wider = document.documentElement.scrollWidth - window.innerWidth
    if (wider > 0) found.push([`scrolls sideways by ${wider} px`, null])
    for (const element of document.querySelectorAll('button, a, summary, select, input, textarea')) {
      const { width, height } = (element.closest('label') ?? element).getBoundingClientRect()
      if (!element.checkVisibility({ visibilityProperty: true }) || element.closest('p')) continue
      if (width < 44 || height < 48) found.push([`${Math.round(width)} x ${Math.round(height)} px to tap`, element])
    }
    for (const element of document.querySelectorAll('main *, .bottom *')) {
      const { fontSize, overflowX } = getComputedStyle(element)
      const isText = [...element.childNodes].some(node => node.nodeType === 3 && node.textContent?.trim())
      if (!isText || !element.checkVisibility({ visibilityProperty: true }) || element.closest('.hidden, svg')) continue
      if (Number.parseFloat(fontSize) < 16) found.push([`text of ${fontSize}`, element])
      if (overflowX === 'hidden' && element.scrollWidth > element.clientWidth + 1) found.push(['cut', element])
    }
    const lines = found.map(([what, where]) => {
      const words = where?.getAttribute('aria-label') ?? where?.textContent ?? ''
      return `${what}${where ? `: ${words.trim().replaceAll(/\s+/g, ' ').slice(0, 40)}` : ''}`
    })
    return [...new Set(lines)]
  })
}

/** Until the page has drawn what it loads later. */
export async function whenLoaded(page: Page): Promise<void> {
  await expect(page.locator('main').first()).toBeVisible()
  await expect(page.getByText('Opening …')).toHaveCount(0)
  await page.evaluate(() => document.fonts.ready.then(() => null))
}
