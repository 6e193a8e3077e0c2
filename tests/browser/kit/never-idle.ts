import type { Page } from '@playwright/test'

/** A page that is always at work: it fetches nothing but what is asked of it. */
export const neverIdle = (page: Page): Promise<unknown> => page.addInitScript('window.requestIdleCallback = () => 0')
