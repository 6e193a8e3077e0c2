import { expect, type Page, test } from '@playwright/test'
import { chosenKey, foot, fourBallAndPoints, goToHole, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone, type Phone } from './kit/round.ts'
import { type ServerProcess, startServer } from './kit/server.ts'

const notSaved = 'not saved: this phone’s storage is full or closed'

async function openOuting(server: ServerProcess, phone: Phone): Promise<void> {
  await phone.page.goto(server.url)
  await startOuting(phone.page, fourBallAndPoints)
  await goToHole(phone.page, 1)
  await tapScore(phone.page, 'Alder', 4)
  await whenOnServer(phone.page)
}

/** What was put in while nothing could be saved is said to be nowhere but on the server, and is saved in the end. */
async function scoreUnsaved(page: Page): Promise<void> {
  await tapScore(page, 'Birch', 5)
  await expect(foot(page)).toContainText(notSaved)
  await expect(foot(page)).not.toContainText('on this phone')
  await tapScore(page, 'Cedar', 3)
  await expect(foot(page)).toContainText(notSaved)
  await expect(foot(page)).toContainText('on the server')
}

async function expectSaved(page: Page): Promise<void> {
  await expect(foot(page)).toContainText('on this phone')
  await page.reload()
  for (const [name, score] of [
    ['Alder', 4],
    ['Birch', 5],
    ['Cedar', 3],
  ] as const) {
    await expect(chosenKey(page, name, score)).toBeVisible()
  }
}

/** Runs in the page: writes into a database of its own until not even a few bytes more find room. */
async function fillStorage(): Promise<void> {
  const asked = indexedDB.open('ballast', 1)
  asked.onupgradeneeded = () => asked.result.createObjectStore('bytes', { autoIncrement: true })
  await new Promise(resolve => {
    asked.onsuccess = resolve
  })
  const put = (length: number): Promise<boolean> =>
    new Promise(resolve => {
      const writing = asked.result.transaction('bytes', 'readwrite', { durability: 'strict' })
      writing.oncomplete = () => resolve(true)
      writing.onabort = () => resolve(false)
      writing.objectStore('bytes').add(crypto.getRandomValues(new Uint8Array(length)))
    })
  for (let length = 65_536; length >= 16; length /= 2) while (await put(length));
  asked.result.close()
}

test('a storage that is full is said at the foot, scores go to the server, and are saved once there is room', async ({
  browser,
}) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  await openOuting(server, phone)
  const devtools = await phone.context.newCDPSession(phone.page)
  const { usage } = await devtools.send('Storage.getUsageAndQuota', { origin: server.url })
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: server.url, quotaSize: usage + 3_000_000 })
  await phone.page.evaluate(fillStorage)
  await scoreUnsaved(phone.page)
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: server.url })
  await phone.page.evaluate(() => void indexedDB.deleteDatabase('ballast'))
  await expectSaved(phone.page)
  noComplaints([phone])
  await server.stop()
})

test('a storage that fails under the page is said at the foot, scores go to the server, and are saved once it works', async ({
  browser,
}) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  await openOuting(server, phone)
  await phone.page.evaluate(() => {
    const { put } = IDBObjectStore.prototype
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('Internal error', 'UnknownError')
    }
    Object.assign(window, { mendStorage: () => Object.assign(IDBObjectStore.prototype, { put }) })
  })
  await scoreUnsaved(phone.page)
  await phone.page.evaluate('mendStorage()')
  await expectSaved(phone.page)
  noComplaints([phone])
  await server.stop()
})
