import { readFileSync } from 'node:fs'
import { type Browser, expect, type Page, test, type WebSocketRoute } from '@playwright/test'
import { type Op, textOfOp } from '#core/log/op.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { axeClean } from './kit/axe.ts'
import { foot, openTab, tapScore } from './kit/golfer.ts'
import { openFile } from './kit/outing-file.ts'
import { dayThrough } from './kit/prepared.ts'
import { noComplaints, openPhone, type Phone } from './kit/round.ts'
import { openServed } from './kit/served.ts'
import { startServer } from './kit/server.ts'

/** What the foot of every page of an outing says when something is in the way of the scores. */

/** A phone whose server gives another verdict than its own on every op from now on. */
interface Told {
  readonly phone: Phone
  readonly page: Page
  say(verdict: string | null): void
  readonly socket: () => WebSocketRoute | null
}

async function openTold(browser: Browser): Promise<Told> {
  const phone = await openPhone(browser, 'Alder', { hasOutages: true })
  let verdict: string | null = null
  let last: WebSocketRoute | null = null
  await phone.page.routeWebSocket(/socket/, socket => {
    last = socket
    const server = socket.connectToServer()
    socket.onMessage(message => server.send(message))
    server.onMessage(message => {
      const text = String(message)
      // What it has stored all the same it would tell of.
      if (verdict !== null && text.startsWith('42["tell"')) return
      socket.send(verdict === null ? message : text.replaceAll(/\{"kind":"(already )?stored","seq":\d+\}/g, verdict))
    })
  })
  const say = (next: string | null): void => {
    verdict = next
  }
  return { phone, page: phone.page, say, socket: () => last }
}

const newOp = (log: LogId, op: Partial<Op>): Op => ({
  log,
  scope: null,
  device: 'another1' as DeviceId,
  n: 1,
  tick: 500,
  at: 1,
  act: 'said',
  facts: [],
  ...op,
})

const logOf = (page: Page): LogId => /#\/o\/([^/]+)/.exec(page.url())?.[1] as LogId

test('what the server puts off or does not take, and what somebody hands in for the desk', async ({ browser }) => {
  const server = await startServer()
  const { phone, page, say, socket } = await openTold(browser)
  await page.goto(server.url)
  await openFile(page, dayThrough(1), 'Alder')
  await expect(foot(page)).toContainText('on the server')
  const fact = { key: 'title', value: 'Autumn Cup', replaces: [] }
  const text = textOfOp(newOp(logOf(page), { facts: [fact] }))
  socket()?.send(`42${JSON.stringify(['offered', { ops: [{ text, carrier: 'another1' }] }])}`)
  await expect(page.getByRole('button', { name: /^Take in/ })).toBeVisible()
  await axeClean(page, 'every page of an outing', 'handed in for the desk')

  say('{"kind":"later","reason":"newer"}')
  await tapScore(page, 'Birch', 5)
  await expect(page.locator('.foot-item').filter({ hasText: 'newer than the server' })).toBeVisible()
  await axeClean(page, 'every page of an outing', 'put off by the server')
  noComplaints([phone])
  await server.stop()
})

test('a score that the server refuses stays in sight with its reason', async ({ browser }) => {
  const server = await startServer()
  const { phone, page, say } = await openTold(browser)
  await page.goto(server.url)
  await openFile(page, dayThrough(1), 'Alder')
  await expect(foot(page)).toContainText('on the server')
  say('{"kind":"refused","code":"forbidden","path":""}')
  // It may be gone again before it is seen to stand.
  await page.getByRole('button', { name: 'Birch 5', exact: true }).click()
  await expect(page.getByRole('button', { name: /^Put away/ })).toBeVisible()
  await axeClean(page, 'every page of an outing', 'refused by the server')
  noComplaints([phone])
  await server.stop()
})

test('a disk that fails, and the other page of the phone that then holds what is not saved', async ({ browser }) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  await phone.context.addInitScript(() => {
    const { transaction } = IDBDatabase.prototype
    IDBDatabase.prototype.transaction = function (...args) {
      if ('isDiskFull' in window && args[1] === 'readwrite') throw new DOMException('full', 'QuotaExceededError')
      return transaction.apply(this, args)
    }
  })
  const { page } = phone
  await page.goto(server.url)
  await openFile(page, dayThrough(1), 'Alder')
  await expect(foot(page)).toContainText('on the server')
  const other = await phone.context.newPage()
  await other.goto(page.url())
  await expect(other.getByRole('button', { name: 'Birch 5', exact: true })).toBeVisible()
  for (const each of [page, other]) await each.evaluate(() => Object.assign(window, { isDiskFull: true }))
  await page.getByRole('button', { name: 'Birch 5', exact: true }).click()
  await expect(page.getByText('not saved: this phone’s storage is full or closed')).toBeVisible()
  await axeClean(page, 'every page of an outing', 'the disk fails')
  await other.getByRole('button', { name: 'Cedar 5', exact: true }).click()
  await expect(other.getByText('not saved: go on in the other open page of this outing')).toBeVisible()
  await axeClean(other, 'every page of an outing', 'another page has it')
  await server.stop()
})

test('an outing in which a newer version has written', async ({ browser }) => {
  const { server, phone, page } = await openServed(browser)
  await openFile(page, dayThrough(1), 'Alder')
  await openTab(page, 'Card')
  const downloading = page.waitForEvent('download')
  await page.getByRole('link', { name: 'Download the outing file, whole' }).click()
  const whole = JSON.parse(readFileSync(await (await downloading).path(), 'utf8'))
  const fact = { key: 'weather', value: 'rain', replaces: [] }
  const file = { ...whole, ops: [...whole.ops, newOp(whole.log, { facts: [fact] })] }
  const reader = await openPhone(browser, 'Hazel')
  await reader.page.goto(server.url)
  await openFile(reader.page, file, 'Hazel')
  await expect(reader.page.getByText('Something here was written by a newer version.')).toBeVisible()
  await axeClean(reader.page, 'every page of an outing', 'from a newer version')
  noComplaints([phone, reader])
  await server.stop()
})
