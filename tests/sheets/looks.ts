import type { CDPSession, Page } from '@playwright/test'

export const widths = [320, 390, 768, 1280] as const
export const lights = ['day', 'night'] as const
/** Of the browser's usual size of text, in per cent. */
export const textSizes = [100, 200] as const

/** One way in which a page may be looked at. */
export interface Look {
  readonly width: (typeof widths)[number]
  readonly light: (typeof lights)[number]
  readonly text: (typeof textSizes)[number]
}

export const looks: readonly Look[] = widths.flatMap(width =>
  textSizes.flatMap(text => lights.map(light => ({ width, light, text }))),
)

/** The window that a screen of that width commonly has, px. */
export const windowHeight: Readonly<Record<Look['width'], number>> = { 320: 568, 390: 844, 768: 1024, 1280: 800 }

export const nameOfLook = ({ width, light, text }: Look): string => `${width}-${light}-${text}`

const usualTextPx = 16

/** Shows the page in this look, in its usual window. Large text is the browser's own setting, as a person makes it. */
export async function lookAt(page: Page, session: CDPSession, { width, light, text }: Look): Promise<void> {
  await page.setViewportSize({ width, height: windowHeight[width] })
  await page.emulateMedia({ colorScheme: light === 'day' ? 'light' : 'dark', reducedMotion: 'reduce' })
  await session.send('Page.setFontSizes', { fontSizes: { standard: (usualTextPx * text) / 100 } })
  await whenDrawn(page)
}

/** Two frames on, so that what was asked for is on the page. */
export const whenDrawn = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>(resolve => {
        requestAnimationFrame(() => requestAnimationFrame(() => resolve()))
      }),
  )
