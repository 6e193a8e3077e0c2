import { expect, onTestFinished, test, vi } from 'vitest'
import { browserClock } from '#client/device/browser-clock.ts'
import { createAnyLink } from '#client/sync/any-link.ts'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import { makeKey } from '#core/outing/keys.ts'
import type { DeviceId, GroupId, InviteId, LogId } from '#core/values/ids.ts'
import { startBadProxy } from '#tests/kit/bad-proxy.ts'
import { connect, startApp } from '#tests/server/support/app.ts'
import { makePhone, score } from '#tests/server/support/phone.ts'
import { makeRecord } from './make-held.ts'
import { deskInvite, hash } from './phone.ts'

/** The server's address behind a network that lets plain requests through and refuses every web socket. */
async function withoutWebSockets(target: string): Promise<string> {
  const proxy = await startBadProxy(target)
  onTestFinished(proxy.close)
  proxy.set({ kind: 'no web sockets' })
  return proxy.url
}

function startEngine(url: string, device: string): Engine {
  const link = createAnyLink({ url, clock: browserClock, fetch: (...request) => fetch(...request) })
  const inventions = { device: () => `${device}-again` as DeviceId, secret: () => 'N'.repeat(22), hash }
  const record = makeRecord({
    log: 'real' as LogId,
    device: device as DeviceId,
    key: device.padEnd(22, 'K'),
    invite: deskInvite,
  })
  const stored = { record, ops: [] }
  const store = createMemoryStore()
  const engine = createEngine({
    store,
    link,
    clock: browserClock,
    renaming: async () => renamingWith(inventions),
    stored,
    isSaved: false,
    changed: () => {},
  })
  onTestFinished(engine.disconnect)
  return engine
}

const grantOf = (device: string, invite: string | null) => ({
  key: makeKey('key', { device }),
  value: { hash: hash(device.padEnd(22, 'K')), role: 'desk', group: null, label: device, invite },
  replaces: [],
})

const say = (engine: Engine, score: number) =>
  engine.write(() => ({
    scope: null,
    act: 'score entered',
    facts: [{ key: `score/rowan/${score}/1/desk`, value: score, replaces: [] }],
  }))

const settled = (engine: Engine) => () => {
  const { waiting, link } = engine.foot()
  if (waiting > 0 || link !== 'live') throw new Error(`${waiting} waiting, ${link}`)
}
const patience = { timeout: 20_000, interval: 20 }

test('where web sockets are blocked the same ops go by plain requests, both ways', async () => {
  const app = await startApp()
  const alder = startEngine(app.url, 'alder')
  await alder.write(() => ({
    scope: null,
    act: 'outing started',
    facts: [
      grantOf('alder', null),
      {
        key: makeKey('invite', { invite: deskInvite.id }),
        value: { hash: hash(deskInvite.secret), role: 'desk', group: null, label: 'Desk' },
        replaces: [],
      },
    ],
  }))
  alder.connect()
  await vi.waitFor(settled(alder), patience)
  const birch = startEngine(await withoutWebSockets(app.url), 'birch')
  await birch.write(() => ({ scope: null, act: 'phone joined', facts: [grantOf('birch', deskInvite.id)] }))
  await say(birch, 4)
  birch.connect()
  await vi.waitFor(settled(birch), patience)
  await say(alder, 7)
  await vi.waitFor(() => {
    for (const { holding } of [alder, birch]) expect(holding().ops.size).toBe(4)
  }, patience)
  expect(birch.holding().state).toEqual(alder.holding().state)
})

test('a desk that looks in by plain requests sees what others carry for it, and who asks to be let in', async () => {
  const app = await startApp()
  const alder = startEngine(await withoutWebSockets(app.url), 'alder')
  const scorer = { id: 'scorer-invite' as InviteId, secret: 'R'.repeat(22) }
  const given = { hash: hash(scorer.secret), role: 'scorer', group: 'a', label: 'First' }
  await alder.write(() => ({
    scope: null,
    act: 'outing started',
    facts: [
      grantOf('alder', null),
      { key: makeKey('group', { group: 'a' as GroupId }), value: { name: 'First' }, replaces: [] },
      { key: makeKey('group', { group: 'b' as GroupId }), value: { name: 'Second' }, replaces: [] },
      { key: makeKey('invite', { invite: scorer.id }), value: given, replaces: [] },
    ],
  }))
  alder.connect()
  await vi.waitFor(settled(alder), patience)
  const birch = makePhone('birch', { ...scorer, role: 'scorer', group: 'a' as GroupId }, 'real')
  const line = await connect(app.url, birch)
  await line.ask('push', { ops: [birch.op([birch.keyFact('scorer', 'a')])] })
  const carried = makePhone('cedar', null, 'real').op([score('b', 5)], { scope: 'b' as GroupId })
  const put = await line.ask('push', { ops: [carried] })
  expect(put).toEqual({ verdicts: [{ kind: 'later', reason: 'desk' }] })
  const { spoken } = (await line.ask('words', { group: 'a' })) as { spoken: { words: string[] } }
  const body = JSON.stringify({ words: spoken.words.join(' '), name: 'Maple' })
  await fetch(`${app.url}/api/ask`, { method: 'POST', headers: { 'content-type': 'application/json' }, body })
  await vi.waitFor(() => {
    expect(alder.foot().offered.map(({ text }) => text)).toEqual([carried])
    expect(alder.foot().askers).toMatchObject([{ name: 'Maple', group: 'a' }])
    expect(alder.foot().spoken).toMatchObject([{ words: spoken.words }])
  }, patience)
  await alder.bring([carried])
  await vi.waitFor(() => expect(alder.foot().offered).toEqual([]), patience)
})
