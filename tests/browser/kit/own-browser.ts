import { type ChildProcess, spawn } from 'node:child_process'
import { createInterface } from 'node:readline'
import { type Browser, chromium, type Page } from '@playwright/test'
import { endAtExit } from './at-exit.ts'
import { chromiumArgs, chromiumPath } from './chromium.ts'

const args = [...chromiumArgs, '--headless', '--remote-debugging-port=0', '--window-size=390,844']

/** A browser with a profile of its own on disk, in a process group of its own that can be killed at once. */
export interface OwnBrowser {
  readonly page: Page
  /** SIGKILL to the whole group, at once: nothing is flushed, nothing is closed. */
  killNow(): void
  whenGone(): Promise<void>
}

export async function launchOwnBrowser(profile: string): Promise<OwnBrowser> {
  const child = spawn(chromiumPath, [...args, `--user-data-dir=${profile}`], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  const gone = new Promise<void>(resolve => child.once('exit', () => resolve()))
  const killNow = (): void => {
    if (child.pid !== undefined && child.exitCode === null && child.signalCode === null)
      process.kill(-child.pid, 'SIGKILL')
  }
  endAtExit(killNow)
  const browser: Browser = await chromium.connectOverCDP(await endpointOf(child))
  const [context] = browser.contexts()
  if (!context) throw new Error('the browser has no context')
  const page = context.pages()[0] ?? (await context.newPage())
  await page.setViewportSize({ width: 390, height: 844 })
  return {
    page,
    killNow,
    whenGone: () => gone,
  }
}

function endpointOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('exit', code => reject(new Error(`the browser ended with ${code}`)))
    if (!child.stderr) throw new Error('no standard error')
    createInterface({ input: child.stderr }).on('line', line => {
      const endpoint = /DevTools listening on (ws:\S+)/.exec(line)?.[1]
      if (endpoint) resolve(endpoint)
    })
  })
}
