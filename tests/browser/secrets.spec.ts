import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { joinsOf, type Named, secretsIn } from '#tests/kit/secret-search.ts'
import { fourBallAndPoints, goToHole, openTab, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

/** Everything that a page asks for, with what it says of itself there; the two headers that are made for secrets aside. */
function watchRequests(page: Page): () => string {
  const seen: string[] = []
  page.on('request', request => {
    const { authorization: _key, 'x-invite': _invite, ...headers } = request.headers()
    seen.push(`${request.url()} ${JSON.stringify(headers)}`)
  })
  page.on('websocket', socket => seen.push(socket.url()))
  return () => seen.join('\n')
}

/** The secrets that the phone keeps for itself, out of its own storage: its key, its invite, and those it has made. */
const secretsOf = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const found: string[] = []
    const look = (value: unknown, name: string): void => {
      if (typeof value === 'string' && (name === 'key' || name === 'secret') && /^[\w-]{22,}$/.test(value))
        found.push(value)
      else if (typeof value === 'object' && value !== null)
        for (const [key, inner] of Object.entries(value)) look(inner, key)
    }
    for (const { name } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>(resolve => {
        const opening = indexedDB.open(name ?? '')
        opening.onsuccess = () => resolve(opening.result)
      })
      for (const store of database.objectStoreNames) {
        const all = database.transaction(store).objectStore(store).getAll()
        await new Promise(resolve => {
          all.onsuccess = resolve
        })
        look(all.result, store)
      }
      database.close()
    }
    return [...new Set(found)]
  })

/** What a page leaves outside that storage: its address, who sent it here, its title, and everything kept for it. */
const leftBy = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const cached: string[] = []
    for (const name of await caches.keys()) {
      const cache = await caches.open(name)
      for (const request of await cache.keys()) {
        const kept = await cache.match(request)
        cached.push(request.url, JSON.stringify([...request.headers]), (await kept?.text()) ?? '')
      }
    }
    const stored = [localStorage, sessionStorage].map(storage => JSON.stringify({ ...storage }))
    const entries = performance.getEntriesByType('resource').map(({ name }) => name)
    const state = JSON.stringify(history.state)
    return [
      location.href,
      document.referrer,
      document.title,
      document.cookie,
      state,
      ...stored,
      ...entries,
      ...cached,
    ].join('\n')
  })

/** All that can be read on a page, with every name and hint that it has for those who do not see it. */
const shownOn = (page: Page): Promise<string> =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true
    return `${document.documentElement.outerHTML}\n${document.body.textContent}`
  })

async function downloaded(page: Page, name: string): Promise<Named<string>> {
  const waiting = page.waitForEvent('download')
  await page.getByRole('link', { name, exact: true }).click()
  const download = await waiting
  const text = readFileSync(await download.path(), 'utf8')
  expect(text.length).toBeGreaterThan(100)
  return { name, value: `${download.suggestedFilename()}\n${text}` }
}

const filesOf = (folder: string): Named<Buffer>[] =>
  readdirSync(folder).map(name => ({ name, value: readFileSync(join(folder, name)) }))

test('a round of two phones leaves its secrets on the phones, and the invite where it is shown to be scanned', async ({
  browser,
}) => {
  const server = await startServer('dist/server/main.js', 'trace')
  const phones = [await openPhone(browser, 'Alder'), await openPhone(browser, 'Birch')] as const
  const [alder, birch] = phones
  const requests = phones.map(({ page }) => watchRequests(page))
  await alder.page.goto(server.url)
  await startOuting(alder.page, fourBallAndPoints)
  await openTab(alder.page, 'Share')
  const link = await alder.page.getByRole('textbox', { name: 'Invite link' }).inputValue()
  await alder.page.getByRole('button', { name: 'Get three words' }).click()
  const words = ((await alder.page.locator('.three-words').textContent()) ?? '').trim().split(/\s+/)
  expect(words).toHaveLength(3)
  await birch.page.goto(link)
  await birch.page.getByRole('textbox', { name: 'Your name' }).fill('Birch')
  await birch.page.getByRole('button', { name: 'Join the outing' }).click()
  await expect(birch.page.getByRole('heading', { name: 'Alder' })).toBeVisible()
  await tapScore(birch.page, 'Rowan', 4)
  await goToHole(alder.page, 1)
  await tapScore(alder.page, 'Alder', 5)
  for (const { page } of phones) await whenOnServer(page)

  const places: Named<string | Buffer>[] = []
  for (const { name, page } of phones) {
    for (const tab of ['Hole', 'Board', 'Card'] as const) {
      await openTab(page, tab)
      for (const media of ['screen', 'print'] as const) {
        await page.emulateMedia({ media })
        places.push({ name: `${tab} of ${name} (${media})`, value: await shownOn(page) })
      }
      await page.emulateMedia({ media: 'screen' })
    }
    for (const file of ['plain', 'whole']) places.push(await downloaded(page, `Download the outing file, ${file}`))
    places.push({ name: `what the page of ${name} left`, value: await leftBy(page) })
  }
  places.push(...requests.map((seen, place) => ({ name: `the requests of phone ${place + 1}`, value: seen() })))
  places.push({ name: 'the server’s log', value: server.log() }, ...filesOf(server.dataDir))

  const own = (await Promise.all(phones.map(({ page }) => secretsOf(page)))).flat()
  const invite = link.split('/').at(-1) ?? ''
  // A key each, and the invite of the link.
  expect(new Set(own).size).toBeGreaterThanOrEqual(3)
  expect(own).toContain(invite)
  const secrets = [
    ...own.map((value, place) => ({ name: `secret ${place + 1}`, value })),
    ...joinsOf(words).map(value => ({ name: 'the three words', value })),
  ]
  expect(server.log()).toContain('"path":"/worker.js"')
  expect(secretsIn(places, secrets)).toEqual([])
  // The search would find it: here it is meant to be.
  await openTab(alder.page, 'Share')
  await expect(alder.page.getByRole('textbox', { name: 'Invite link' })).toHaveValue(link)
  const meant = [{ name: 'Share', value: await shownOn(alder.page) }]
  expect(secretsIn(meant, [{ name: 'the invite', value: invite }])).toContain('the invite stands in Share, plain')
  noComplaints(phones)
  await server.stop()
})
