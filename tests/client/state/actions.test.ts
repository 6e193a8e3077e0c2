import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { standingsOf } from '#core/log/fold.ts'
import type { NewFact } from '#core/outing/acts.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { type RunningApp, startApp } from '#tests/server/support/app.ts'
import { openPage, type Page, until } from './page.ts'

const rowan = 'rowan' as BallId
const facts: readonly NewFact[] = [
  { key: 'title', value: 'Saturday' },
  { key: 'course', value: { name: 'Quillmoor' } },
  { key: 'player/rowan', value: { name: 'Rowan' } },
  { key: 'ball/rowan', value: { players: ['rowan'] } },
  { key: 'group/first', value: { name: 'First' } },
  { key: 'place/rowan', value: { group: 'first', position: 1, elsewhere: [] } },
]

let app: RunningApp
const pages: Page[] = []

const open = async (origin = app.url, disk?: IDBFactory): Promise<Page> => {
  const page = await openPage(origin, disk)
  pages.push(page)
  return page
}

const scoresOf = (page: Page): unknown[] =>
  standingsOf(page.store.getState().state, 'g/first/score/rowan/8/1/card').map(({ value }) => value)

const isOnServer = (page: Page) => () => {
  const { foot } = page.store.getState()
  return foot.waiting === 0 && foot.link === 'live'
}

beforeEach(async () => {
  app = await startApp()
})

afterEach(async () => {
  for (const page of pages.splice(0)) page.actions.closeOuting()
  await app.close()
  vi.unstubAllGlobals()
})

describe('the actions against a real server', () => {
  test('two phones start, join, score, differ, choose and undo', async () => {
    const alder = await open()
    const log = await alder.actions.startOuting(facts, 'Alder')
    expect(alder.store.getState()).toMatchObject({ phase: 'open', log, me: { role: 'desk', label: 'Alder' } })
    await until(isOnServer(alder))
    const link = await alder.actions.inviteLink('scorer', 'first' as GroupId)
    const birch = await open()
    expect(await birch.actions.joinOuting(link, 'Birch')).toEqual({ ok: true, value: log })
    expect(birch.store.getState()).toMatchObject({ me: { role: 'desk', label: 'Birch' }, phase: 'open' })
    await until(isOnServer(birch))
    await until(() => alder.store.getState().outing?.phones.size === 2)
    await alder.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 5 })
    await until(() => scoresOf(birch).length === 1)
    birch.actions.closeOuting()
    await alder.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 6 })
    await until(isOnServer(alder))
    await birch.actions.openOuting(log)
    await until(() => scoresOf(birch)[0] === 6)
    await birch.actions.chooseScore({ ball: rowan, hole: 8, lap: 1, score: 4 })
    await until(() => scoresOf(alder)[0] === 4)
    const chosen = alder.store.getState().history.at(-1)
    expect(chosen?.op.act).toBe('score chosen')
    const left = await alder.actions.undo(`${chosen?.op.device}.${chosen?.op.n}` as never)
    expect(left).toEqual([])
    await until(() => scoresOf(birch)[0] === 6)
    await birch.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: null })
    await until(() => scoresOf(alder).length === 0)
    expect(alder.store.getState().outing?.courseName).toBe('Quillmoor')
    expect(await alder.actions.listOutings()).toMatchObject([{ log, title: 'Saturday', courseName: 'Quillmoor' }])
  })

  test('what is on the phone is there after a restart with no server, and goes up when one is back', async () => {
    const nowhere = 'http://127.0.0.1:9'
    const alder = await open(nowhere)
    const log = await alder.actions.startOuting(facts, 'Alder')
    await alder.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 5 })
    expect(alder.store.getState().foot).toMatchObject({ phone: 'saved', waiting: 2 })
    alder.actions.closeOuting()
    const again = await open(app.url, alder.disk)
    expect(await again.actions.listOutings()).toMatchObject([{ log, waiting: 2 }])
    await again.actions.openOuting(log)
    expect(scoresOf(again)).toEqual([5])
    await until(isOnServer(again))
  })

  test('an outing that is not on this phone is not here', async () => {
    const page = await open()
    await page.actions.openOuting('nowhere' as never)
    expect(page.store.getState().phase).toBe('not here')
  })

  test('joining says why it cannot', async () => {
    const page = await open()
    const secret = 'A'.repeat(22)
    const join = (link: string) => page.actions.joinOuting(link, 'Cedar')
    expect(await join('hello')).toEqual({ ok: false, error: 'not an invite' })
    expect(await join(`${app.url}/#/join/unknown/some/${secret}`)).toEqual({ ok: false, error: 'log unknown' })
    const log = await page.actions.startOuting(facts, 'Alder')
    await until(isOnServer(page))
    const other = await open()
    const wrong = await other.actions.joinOuting(`${app.url}/#/join/${log}/some/${secret}`, 'Cedar')
    expect(wrong).toEqual({ ok: false, error: 'invite unknown' })
    expect(await other.actions.listOutings()).toEqual([])
    const far = await open('http://127.0.0.1:9')
    expect(await far.actions.joinOuting(`/join/${log}/some/${secret}`, 'Cedar')).toEqual({
      ok: false,
      error: 'no server',
    })
  })

  test('looking at an invite names the outing and registers nothing', async () => {
    const alder = await open()
    const log = await alder.actions.startOuting(facts, 'Alder')
    await until(isOnServer(alder))
    const link = await alder.actions.inviteLink('desk', null)
    const own = await alder.actions.lookAtInvite(link)
    expect(own).toMatchObject({ ok: true, value: { log, isIn: true } })
    const birch = await open()
    const seen = { log, isIn: false, title: 'Saturday', courseName: 'Quillmoor', day: null, players: ['Rowan'] }
    expect(await birch.actions.lookAtInvite(link)).toEqual({ ok: true, value: seen })
    expect(await birch.actions.listOutings()).toEqual([])
    expect(birch.store.getState().phase).toBe('closed')
    await birch.actions.joinOuting(link, 'Birch')
    await until(() => alder.store.getState().outing?.phones.size === 2)
    const far = await open('http://127.0.0.1:9')
    expect(await far.actions.lookAtInvite(link)).toEqual({ ok: false, error: 'no server' })
  })

  test('a whole file opens to be read on a phone that nobody let in, and an invite lets it in', async () => {
    const alder = await open()
    const log = await alder.actions.startOuting(facts, 'Alder')
    await alder.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 5 })
    await until(isOnServer(alder))
    const link = await alder.actions.inviteLink('desk', null)
    const file = alder.actions.exportFile('whole')
    expect(file?.text).not.toContain(link.split('/').at(-1))
    const cedar = await open()
    expect(await cedar.actions.importFile(file?.text ?? '', 'Cedar')).toEqual({ ok: true, value: log })
    expect(cedar.store.getState()).toMatchObject({
      phase: 'open',
      me: { role: null },
      foot: { waiting: 0, link: 'away' },
    })
    expect(scoresOf(cedar)).toEqual([5])
    expect(await cedar.actions.joinOuting(link, 'Cedar')).toEqual({ ok: true, value: log })
    await until(isOnServer(cedar))
    expect(cedar.store.getState().me).toMatchObject({ role: 'desk', label: 'Cedar' })
  })

  test('a file that is none names its faults', async () => {
    const page = await open()
    expect(await page.actions.importFile('{}', 'Cedar')).toMatchObject({ ok: false })
    expect(page.store.getState().phase).toBe('closed')
  })
})
