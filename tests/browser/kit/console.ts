import type { Page } from '@playwright/test'

/** Collects what a page complains of: errors on its console and errors that nobody caught. */
export function watchConsole(page: Page, isExpected: (text: string) => boolean = () => false): readonly string[] {
  const complaints: string[] = []
  const add = (text: string) => {
    if (!isExpected(text)) complaints.push(text)
  }
  page.on('console', message => {
    if (message.type() === 'error') add(`console: ${message.text()}`)
  })
  page.on('pageerror', error => add(`uncaught: ${error.message}`))
  return complaints
}

/** What a browser itself logs while there is no network; the page cannot keep it from doing so. */
export const isNetworkComplaint = (text: string): boolean =>
  /net::ERR_(INTERNET_DISCONNECTED|CONNECTION_REFUSED|CONNECTION_RESET|NETWORK_CHANGED)|WebSocket connection to/.test(
    text,
  )
