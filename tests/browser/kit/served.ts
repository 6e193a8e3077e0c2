import type { Browser, Page } from '@playwright/test'
import { openPhone, type Phone } from './round.ts'
import { type ServerProcess, startServer } from './server.ts'

/** A server of its own, and one phone on its first page. */
export async function openServed(
  browser: Browser,
): Promise<{ readonly server: ServerProcess; readonly phone: Phone; readonly page: Page }> {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  await phone.page.goto(server.url)
  return { server, phone, page: phone.page }
}
