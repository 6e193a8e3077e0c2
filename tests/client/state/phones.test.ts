import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { standingsOf } from '#core/log/fold.ts'
import type { NewFact } from '#core/outing/acts.ts'
import type { BallId, GroupId } from '#core/values/ids.ts'
import { type RunningApp, startApp } from '#tests/server/support/app.ts'
import { isOnServer, openPage, type Page, until } from './page.ts'

const rowan = 'rowan' as BallId
const groupFacts = (group: string, player: string): readonly NewFact[] => [
  { key: `player/${player}`, value: { name: player } },
  { key: `ball/${player}`, value: { players: [player] } },
  { key: `group/${group}`, value: { name: group } },
  { key: `place/${player}`, value: { group, position: 1, elsewhere: [] } },
]
const oneGroup = groupFacts('first', 'rowan')
const twoGroups = [...oneGroup, ...groupFacts('second', 'maple')]

let app: RunningApp
const pages: Page[] = []

const open = async (origin = app.url): Promise<Page> => {
  const page = await openPage(origin)
  pages.push(page)
  return page
}

const scoreOf = (page: Page, group = 'first', ball = 'rowan'): unknown[] =>
  standingsOf(page.store.getState().state, `g/${group}/score/${ball}/8/1/card`).map(({ value }) => value)

async function startAlder(facts = oneGroup): Promise<Page> {
  const alder = await open()
  await alder.actions.startOuting(facts, 'Alder')
  await until(isOnServer(alder))
  return alder
}

async function said(page: Page, group: GroupId | null): Promise<string> {
  const answer = await page.actions.sayWords(group)
  if (!answer.ok) throw new Error(answer.error)
  return answer.value.words.join(' ')
}

/** Lets the one in who asks on the other page; gives the link that came. */
async function letInBy(page: Page, other: Page, words: string, name: string): Promise<string> {
  const ticket = await other.actions.askByWords(words, name)
  if (!ticket.ok) throw new Error(ticket.error)
  await until(() => page.store.getState().foot.askers.length === 1)
  const [asker] = page.store.getState().foot.askers
  if (!asker) throw new Error('nobody asks')
  expect(await page.actions.letIn(asker)).toBeNull()
  const progress = await other.actions.lookAtTicket(ticket.value)
  if (progress.kind !== 'let in') throw new Error(progress.kind)
  return progress.link
}

beforeEach(async () => {
  app = await startApp()
})

afterEach(async () => {
  for (const page of pages.splice(0)) page.actions.closeOuting()
  await app.close()
  vi.unstubAllGlobals()
})

describe('three words', () => {
  test('let a phone in as a desk where all are', async () => {
    const alder = await startAlder()
    const words = await said(alder, null)
    const birch = await open()
    const link = await letInBy(alder, birch, words, 'Birch')
    expect(await birch.actions.joinOuting(link, 'Birch')).toMatchObject({ ok: true })
    expect(birch.store.getState().me).toMatchObject({ role: 'desk', label: 'Birch' })
    await until(() => alder.store.getState().foot.askers.length === 0)
    await until(() => alder.store.getState().outing?.phones.size === 2)
  })

  test('let a phone into its group of several, and such a phone lets in another', async () => {
    const alder = await startAlder(twoGroups)
    const second = 'second' as GroupId
    const birch = await open()
    await birch.actions.joinOuting(await letInBy(alder, birch, await said(alder, second), 'Birch'), 'Birch')
    expect(birch.store.getState().me).toMatchObject({ role: 'scorer', group: 'second' })
    await until(isOnServer(birch))
    expect(await birch.actions.sayWords('first' as GroupId)).toEqual({ ok: false, error: 'not yours' })
    const words = await said(birch, second)
    const cedar = await open()
    await cedar.actions.joinOuting(await letInBy(birch, cedar, words, 'Cedar'), 'Cedar')
    expect(cedar.store.getState().me).toMatchObject({ role: 'scorer', group: 'second' })
  })

  test('are answered not now, and asked for in vain when wrong or out of reach', async () => {
    const alder = await startAlder()
    const words = await said(alder, null)
    const birch = await open()
    const ticket = await birch.actions.askByWords(words, 'Birch')
    await until(() => alder.store.getState().foot.askers.length === 1)
    const [asker] = alder.store.getState().foot.askers
    if (!ticket.ok || !asker) throw new Error('not asked')
    expect(await birch.actions.lookAtTicket(ticket.value)).toEqual({ kind: 'waiting' })
    await alder.actions.notNow(asker)
    expect(await birch.actions.lookAtTicket(ticket.value)).toEqual({ kind: 'not now' })
    expect(await alder.actions.letIn(asker)).toBe('gone')
    expect(await birch.actions.askByWords('no such words', 'Birch')).toEqual({ ok: false, error: 'words unknown' })
    const far = await open('http://127.0.0.1:9')
    expect(await far.actions.askByWords(words, 'Birch')).toEqual({ ok: false, error: 'no server' })
    expect(await far.actions.lookAtTicket(ticket.value)).toEqual({ kind: 'no server' })
  })
})

describe('a phone that is taken out', () => {
  async function takeOut(alder: Page, label: string): Promise<void> {
    const [device] = [...(alder.store.getState().outing?.phones ?? [])].find(([, phone]) => phone.label === label) ?? []
    if (!device) throw new Error(`no phone of ${label}`)
    await alder.actions.takePhoneOut(device)
    await until(isOnServer(alder))
  }

  async function startBoth(): Promise<{ alder: Page; birch: Page; link: string }> {
    const alder = await startAlder()
    const link = await alder.actions.inviteLink('desk', null)
    const birch = await open()
    await birch.actions.joinOuting(link, 'Birch')
    await until(isOnServer(birch))
    await until(() => alder.store.getState().outing?.phones.size === 2)
    return { alder, birch, link }
  }

  test('says so, keeps what it has not sent, and hands it over to another', async () => {
    const { alder, birch } = await startBoth()
    await takeOut(alder, 'Birch')
    await until(() => birch.store.getState().foot.stranger === 'voided')
    await birch.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 6 })
    expect(birch.store.getState().foot).toMatchObject({ waiting: 1, phone: 'saved' })
    expect(scoreOf(birch)).toEqual([6])
    await alder.actions.takeOver(birch.actions.handOverText(), 'Alder')
    await until(() => scoreOf(alder)[0] === 6)
    await until(isOnServer(alder))
  })

  test('is let in anew by an invite under another name, and what it had not sent goes up', async () => {
    const { alder, birch, link } = await startBoth()
    const before = birch.store.getState().me?.device
    await takeOut(alder, 'Birch')
    await until(() => birch.store.getState().foot.stranger === 'voided')
    await birch.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 6 })
    expect(await birch.actions.joinOuting(link, 'Birch')).toMatchObject({ ok: true })
    expect(birch.store.getState().me?.device).not.toBe(before)
    await until(isOnServer(birch))
    await until(() => scoreOf(alder)[0] === 6)
    const labels = [...(alder.store.getState().outing?.phones.values() ?? [])].map(({ label, isVoid }) => [
      label,
      isVoid,
    ])
    expect(labels.filter(([label]) => label === 'Birch')).toEqual(
      expect.arrayContaining([
        ['Birch', true],
        ['Birch', false],
      ]),
    )
  })

  test('is in again once the desk lets it', async () => {
    const { alder, birch } = await startBoth()
    const device = birch.store.getState().me?.device
    await takeOut(alder, 'Birch')
    await until(() => birch.store.getState().foot.stranger === 'voided')
    await birch.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 6 })
    if (!device) throw new Error('no device')
    await alder.actions.takePhoneBack(device)
    await until(isOnServer(alder))
    birch.actions.retryNow()
    await until(isOnServer(birch))
    await until(() => scoreOf(alder)[0] === 6)
  })
})

describe('an invite that is stopped', () => {
  test('keeps in who came by it, lets nobody else in, and the next link and hand-over carry another', async () => {
    const alder = await startAlder()
    const link = await alder.actions.inviteLink('desk', null)
    const birch = await open()
    await birch.actions.joinOuting(link, 'Birch')
    await until(isOnServer(birch))
    await until(() => alder.store.getState().outing?.phones.size === 2)
    const [id] = [...(alder.store.getState().outing?.invites ?? [])].find(([, { role }]) => role === 'desk') ?? []
    if (!id) throw new Error('no invite')
    const { outing } = alder.store.getState()
    expect([...(outing?.phones.values() ?? [])].filter(({ invite }) => invite === id)).toMatchObject([
      { label: 'Birch' },
    ])

    await alder.actions.stopInvite(id)
    await until(isOnServer(alder))
    const cedar = await open()
    expect(await cedar.actions.joinOuting(link, 'Cedar')).toEqual({ ok: false, error: 'void' })
    await birch.actions.enterScore({ ball: rowan, hole: 8, lap: 1, score: 6 })
    await until(isOnServer(birch))
    await until(() => scoreOf(alder)[0] === 6)
    const next = await alder.actions.inviteLink('desk', null)
    expect(next).not.toBe(link)
    expect(await cedar.actions.joinOuting(next, 'Cedar')).toMatchObject({ ok: true })
    await until(isOnServer(cedar))
    const rowansPhone = await open()
    await rowansPhone.actions.takeOver(alder.actions.handOverText(), 'Rowan')
    await until(isOnServer(rowansPhone))
    await until(() => alder.store.getState().outing?.phones.size === 4)

    await alder.actions.restartInvite(id)
    await until(isOnServer(alder))
    const maple = await open()
    expect(await maple.actions.joinOuting(link, 'Maple')).toMatchObject({ ok: true })
  })

  test('with no signal, waits on the phone of the desk and holds once it is sent', async () => {
    const alder = await open('http://127.0.0.1:9')
    await alder.actions.startOuting(oneGroup, 'Alder')
    const link = await alder.actions.inviteLink('viewer', null)
    const [id] = [...(alder.store.getState().outing?.invites ?? [])].find(([, { role }]) => role === 'viewer') ?? []
    if (!id) throw new Error('no invite')
    await alder.actions.stopInvite(id)
    expect(alder.store.getState().foot.waiting).toBeGreaterThan(0)
    expect(alder.store.getState().outing?.invites.get(id)?.isVoid).toBe(true)
    expect(await alder.actions.inviteLink('viewer', null)).not.toBe(link)
  })
})

test('a phone that another player has goes by the new name on every phone', async () => {
  const alder = await startAlder(twoGroups)
  const link = await alder.actions.inviteLink('scorer', 'second' as GroupId)
  const birch = await open()
  await birch.actions.joinOuting(link, 'Birch')
  await birch.actions.renamePhone('Maple')
  await until(isOnServer(birch))
  expect(birch.store.getState().foot.refused).toEqual([])
  expect(birch.store.getState().me).toMatchObject({ label: 'Maple', role: 'scorer', group: 'second' })
  await until(() => [...(alder.store.getState().outing?.phones.values() ?? [])].some(({ label }) => label === 'Maple'))
})
