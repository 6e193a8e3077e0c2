import { readFileSync } from 'node:fs'
import { extname, join } from 'node:path'
import type { Page } from '@playwright/test'

const types: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.css': 'text/css', '.html': 'text/html' }

/** Opens the server's address with the page of another build; everything but the page's own files is the server's. */
export async function openOtherPage(page: Page, folder: string, url: string): Promise<void> {
  await page.route(/\/(assets\/[^?]*)?$/, route => {
    const { pathname } = new URL(route.request().url())
    const file = join(folder, pathname === '/' ? 'index.html' : pathname)
    return route.fulfill({ body: readFileSync(file), contentType: types[extname(file)] ?? 'font/woff2' })
  })
  await page.goto(url)
}
