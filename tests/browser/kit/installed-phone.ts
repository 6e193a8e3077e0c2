import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium, type Page } from '@playwright/test'
import { endAtExit } from './at-exit.ts'
import { chromiumArgs, chromiumPath } from './chromium.ts'
import { isNetworkComplaint, watchConsole } from './console.ts'
import { noComplaints, type Phone, phoneSize, whenKept } from './round.ts'

/** A phone whose browser has its profile on disk and can be started again. */
export interface InstalledPhone {
  /** As it is now: another page and context after every restart. */
  readonly now: () => Phone
  /** Ends the browser and starts it again with what the disk has; no page is open but an empty one. */
  readonly restart: () => Promise<void>
  readonly close: () => Promise<void>
}

/** A phone that has opened the page once, so that the page opens again with no network. */
export async function installPhone(name: string, url: string): Promise<InstalledPhone> {
  const profile = mkdtempSync(join(tmpdir(), 'six-threes-phone-'))
  endAtExit(() => rmSync(profile, { recursive: true, force: true }))
  let phone = await launch(name, profile)
  await phone.page.goto(url)
  await whenKept(phone.page)
  return {
    now: () => phone,
    restart: async () => {
      noComplaints([phone])
      await phone.context.close()
      phone = await launch(name, profile)
    },
    close: () => phone.context.close(),
  }
}

async function launch(name: string, profile: string): Promise<Phone> {
  const context: BrowserContext = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath,
    args: chromiumArgs,
    viewport: phoneSize,
    acceptDownloads: true,
  })
  const page: Page = context.pages()[0] ?? (await context.newPage())
  return { name, page, context, complaints: watchConsole(page, isNetworkComplaint) }
}
