import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { fileURLToPath } from 'node:url'
import { expect, type Page } from '@playwright/test'
import express from 'express'
import { build } from 'vite'
import { clientFiles } from '#server/http/client-files.ts'
import { goToHole, startOuting, tapScore, whenOnServer } from '#tests/browser/kit/golfer.ts'
import { type InstalledPhone, installPhone } from '#tests/browser/kit/installed-phone.ts'
import { startServer } from '#tests/browser/kit/server.ts'
import { fourPlayers } from '#tests/kit/quillmoor.ts'
import { type BenchResult, quantile, rounded } from './figures.ts'
import { scriptInPage } from './in-page.ts'
import { type SlowPhone, slowPhoneOf } from './slow-phone.ts'

const holesPlayed = 9
/** Starts before anything counts, each left open as a golfer leaves it: the browser has then kept the compiled code of both. */
const warmUps = 2
const openMs = 5_000
const starts = 12
const budget = { median: 2 }

/** An installed page with the address that it is left on, and what is on it once it has started. */
interface Installed {
  readonly phone: InstalledPhone
  readonly address: string
  readonly shown: string
  /** Throws where a finger brings nothing about. */
  readonly answers: (page: Page, slow: SlowPhone) => Promise<void>
}

/**
 * The browser is started anew with the profile of a phone, with no network and slowed down, and opens the address that
 * the phone was left on: from the start of the navigation until the keys of the hole are painted and the page would take
 * a tap, nine holes into a round of four. Beside it the same with an empty React page on a phone of its own, built with
 * the product's own settings: the same worker, but what it holds, keeps that page as it keeps ours, from its
 * installation on, and gives it out by the same way.
 */
export async function benchCold(): Promise<BenchResult> {
  const script = await scriptInPage('cold-page.ts')
  const [ours, empty] = [await installOurs(), await installEmpty()]
  const times: { ours: number[]; empty: number[] } = { ours: [], empty: [] }
  for (let start = 0; start < warmUps + starts; start++) {
    const stayMs = start < warmUps ? openMs : 0
    times.empty.push(await startCold(empty, script, stayMs))
    times.ours.push(await startCold(ours, script, stayMs))
  }
  await Promise.all([ours.phone.close(), empty.phone.close()])
  return resultOf(times.ours.slice(warmUps), times.empty.slice(warmUps))
}

/** Milliseconds. */
async function startCold(
  { phone, address, shown, answers }: Installed,
  script: string,
  stayMs: number,
): Promise<number> {
  await phone.restart()
  const { page, context } = phone.now()
  const slow = await slowPhoneOf(page)
  await context.setOffline(true)
  await page.addInitScript({ content: `${script}\nbench.expect(${JSON.stringify(shown)})` })
  await slow.slowDown()
  await page.goto(address, { waitUntil: 'commit' })
  const painted = await page.evaluate<number>('bench.painted()')
  await answers(page, slow)
  await page.waitForTimeout(stayMs)
  return painted
}

/** The server ends when the round is half played. */
async function installOurs(): Promise<Installed> {
  const server = await startServer()
  const phone = await installPhone('Alder', server.url)
  const { page } = phone.now()
  await startOuting(page)
  for (let hole = 1; hole <= holesPlayed; hole++) {
    await goToHole(page, hole)
    for (const { name, strokes } of fourPlayers) await tapScore(page, name, strokes[hole - 1] ?? 0)
  }
  await whenOnServer(page)
  await goToHole(page, holesPlayed + 1)
  const address = page.url()
  await server.stop()
  return { phone, address, shown: '.keys [aria-pressed]', answers: opensMore }
}

async function opensMore(page: Page, slow: SlowPhone): Promise<void> {
  await slow.touch(page.getByRole('button', { name: 'Alder more', exact: true }))
  await expect(page.getByRole('button', { name: 'Alder picked up', exact: true })).toBeVisible()
}

async function installEmpty(): Promise<Installed> {
  const outDir = fileURLToPath(new URL('../../.cache/bench/empty-page', import.meta.url))
  await build({
    configFile: fileURLToPath(new URL('../../client/vite.config.ts', import.meta.url)),
    root: fileURLToPath(new URL('empty-page', import.meta.url)),
    publicDir: false,
    build: { outDir },
  })
  const server = await serve(outDir)
  const { port } = server.address() as AddressInfo
  const address = `http://127.0.0.1:${port}/`
  const phone = await installPhone('Empty', address)
  await expect(phone.now().page.getByText('One line.')).toBeVisible()
  server.closeAllConnections()
  await new Promise(resolve => server.close(resolve))
  return { phone, address, shown: '#root > p', answers: async () => undefined }
}

const serve = (folder: string): Promise<Server> =>
  new Promise(resolve => {
    const server = express()
      .use(clientFiles(folder))
      .listen(0, '127.0.0.1', () => resolve(server))
  })

function resultOf(ours: readonly number[], empty: readonly number[]): BenchResult {
  const ratio = quantile(ours, 0.5) / quantile(empty, 0.5)
  return {
    name: 'cold',
    ours: figures(ours),
    yardstick: figures(empty),
    ratio: { median: rounded(ratio) },
    budget,
    holds: ratio <= budget.median,
  }
}

const figures = (times: readonly number[]) => ({
  medianMs: rounded(quantile(times, 0.5)),
  p95Ms: rounded(quantile(times, 0.95)),
})
