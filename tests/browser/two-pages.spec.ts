import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { loadDriver } from '#server/store/driver.ts'
import { watchConsole } from './kit/console.ts'
import { chosenKey, fourBallAndPoints, goToHole, startOuting, tapScore, whenOnServer } from './kit/golfer.ts'
import { noComplaints, openPhone } from './kit/round.ts'
import { startServer } from './kit/server.ts'

interface Row {
  readonly device: string
  readonly n: number
}

async function rowsIn(folder: string): Promise<readonly Row[]> {
  const { DatabaseSync } = await loadDriver()
  const database = new DatabaseSync(join(folder, 'six-threes.db'), { readOnly: true })
  try {
    return database.prepare('SELECT device, n FROM ops ORDER BY seq').all() as unknown as Row[]
  } finally {
    database.close()
  }
}

test('two pages of one phone: one talks to the server, closing it hands over, and no number is drawn twice', async ({
  browser,
}) => {
  const server = await startServer()
  const phone = await openPhone(browser, 'Alder')
  await phone.page.goto(server.url)
  await startOuting(phone.page, fourBallAndPoints)
  await goToHole(phone.page, 1)
  const other = await phone.context.newPage()
  const otherComplaints = watchConsole(other)
  await other.goto(phone.page.url())
  await expect(other.getByRole('heading', { name: 'Hole 1', exact: true })).toBeVisible()

  // At once on both, with nothing between them but what they share.
  await Promise.all([tapScore(phone.page, 'Alder', 4), tapScore(other, 'Birch', 5)])
  await Promise.all([tapScore(other, 'Cedar', 3), tapScore(phone.page, 'Rowan', 6)])
  for (const page of [phone.page, other]) {
    await expect(chosenKey(page, 'Alder', 4)).toBeVisible()
    await expect(chosenKey(page, 'Rowan', 6)).toBeVisible()
    await whenOnServer(page)
  }
  const held = await other.evaluate(() => navigator.locks.query().then(all => all.held?.map(({ name }) => name)))
  expect(held?.filter(name => /^six-threes\/(?!player$)[^/]+$/.test(name ?? ''))).toHaveLength(1)

  await other.close()
  await tapScore(phone.page, 'Alder', 5)
  await whenOnServer(phone.page)
  const rows = await rowsIn(server.dataDir)
  expect(new Set(rows.map(({ device }) => device)).size).toBe(1)
  expect(rows.map(({ n }) => n)).toEqual(rows.map((_, place) => place + 1))
  expect(otherComplaints).toEqual([])
  noComplaints([phone])
  await server.stop()
})
