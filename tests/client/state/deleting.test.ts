import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import type { NewFact } from '#core/outing/acts.ts'
import type { LogId } from '#core/values/ids.ts'
import { type RunningApp, startApp } from '#tests/server/support/app.ts'
import { isOnServer, openPage, type Page, until } from './page.ts'

const group = (id: string): readonly NewFact[] => [{ key: `group/${id}`, value: { name: id } }]

let app: RunningApp
const pages: Page[] = []

const open = async (origin = app.url): Promise<Page> => {
  const page = await openPage(origin)
  pages.push(page)
  return page
}

const isToldDeleted = (page: Page) => () => page.store.getState().foot.stranger === 'deleted'

async function startAlder(): Promise<Page> {
  const alder = await open()
  await alder.actions.startOuting(
    [...group('first'), ...group('second'), { key: 'title', value: 'Hornbeam Day' }],
    'Alder',
  )
  await until(isOnServer(alder))
  return alder
}

async function join(link: string, name: string): Promise<Page> {
  const page = await open()
  await page.actions.joinOuting(link, name)
  await until(isOnServer(page))
  return page
}

const logOf = (page: Page): LogId => page.store.getState().log as LogId

beforeEach(async () => {
  app = await startApp()
})
afterEach(() => {
  for (const page of pages.splice(0)) page.actions.closeOuting()
  vi.unstubAllGlobals()
})

describe('an outing that the desk deletes', () => {
  test('is told deleted to the phones that are in, to those that come later and to those that are invited', async () => {
    const alder = await startAlder()
    const link = await alder.actions.inviteLink('desk', null)
    const birch = await join(link, 'Birch')
    expect(await alder.actions.deleteOuting()).toBeNull()
    await until(isToldDeleted(alder))
    await until(isToldDeleted(birch))
    birch.actions.closeOuting()
    await birch.actions.openOuting(logOf(alder))
    await until(isToldDeleted(birch))
    const rowan = await open()
    expect(await rowan.actions.joinOuting(link, 'Rowan')).toEqual({ ok: false, error: 'deleted' })
  })

  test('stays on each phone, which writes on, until it is removed there', async () => {
    const alder = await startAlder()
    const log = logOf(alder)
    await alder.actions.deleteOuting()
    await until(isToldDeleted(alder))
    await alder.actions.act('title set', [{ key: 'title', value: 'Hornbeam Day again' }])
    expect(alder.store.getState().outing?.title).toBe('Hornbeam Day again')
    await until(() => alder.store.getState().history.every(({ seq }) => seq === null))
    expect(alder.actions.exportFile('whole')?.text).toContain('Hornbeam Day again')
    alder.actions.closeOuting()
    expect(await alder.actions.listOutings()).toMatchObject([{ log, title: 'Hornbeam Day again' }])
    await alder.actions.openOuting(log)
    // Before any server has answered: nothing of it is said to be on one.
    expect(alder.store.getState().history.filter(({ seq }) => seq !== null)).toEqual([])
    expect(await alder.actions.removeFromPhone(log)).toBe(true)
    expect(alder.store.getState().phase).toBe('closed')
    expect(await alder.actions.listOutings()).toEqual([])
  })

  test('is deleted by no phone without the right, nor with no server', async () => {
    const alder = await startAlder()
    const birch = await join(await alder.actions.inviteLink('scorer', 'first' as never), 'Birch')
    expect(await birch.actions.deleteOuting()).toBe('not yours')
    expect(isToldDeleted(alder)()).toBe(false)
    const far = await open('http://127.0.0.1:9')
    await far.actions.startOuting(group('first'), 'Larch')
    expect(await far.actions.deleteOuting()).toBe('no server')
  })
})

describe('an outing that is removed from one phone', () => {
  test('is still on the server, and an invite brings it back', async () => {
    const alder = await startAlder()
    const link = await alder.actions.inviteLink('desk', null)
    const birch = await join(link, 'Birch')
    const log = logOf(birch)
    expect(await birch.actions.removeFromPhone(log)).toBe(true)
    expect(await birch.actions.listOutings()).toEqual([])
    expect(await birch.actions.joinOuting(link, 'Birch')).toMatchObject({ ok: true })
    await until(isOnServer(birch))
    expect(birch.store.getState().outing?.title).toBe('Hornbeam Day')
    expect(isOnServer(alder)()).toBe(true)
  })
})
