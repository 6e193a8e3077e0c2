import { beforeEach, describe, expect, test } from 'vitest'
import type { LogStore } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { settle } from './fake-clock.ts'
import { quillmoor } from './make-held.ts'
import { clock, joinLive, same, server, start, startLive, startNetwork, textsOf, valuesStored } from './network.ts'
import { flushAll, found, valuesAt } from './phone.ts'

const eighth = 'g/first/score/rowan/8/1/card'
const ninth = 'g/first/score/rowan/9/1/card'
const tenth = 'g/first/score/rowan/10/1/card'

beforeEach(startNetwork)

describe('a bad network', () => {
  test('an answer that is lost means unknown: sent again, stored once', async () => {
    const alder = await startLive()
    await alder.say(eighth, 5)
    await settle()
    alder.link.up.shift()?.deliver()
    expect(valuesStored(eighth)).toEqual([5])
    alder.link.cut()
    await settle()
    expect(alder.engine.foot()).toMatchObject({ waiting: 1, link: 'connecting' })
    alder.link.plug()
    await alder.flush()
    expect(valuesStored(eighth)).toEqual([5])
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, link: 'live' })
  })

  test('a link that stands and does not carry is not called live, and is made anew', async () => {
    const alder = await startLive()
    await alder.say(eighth, 5)
    await settle()
    alder.link.up.length = 0
    clock.pass(3_000)
    expect(alder.engine.foot().link).toBe('connecting')
    clock.pass(6_000)
    await settle()
    clock.pass(2_000)
    expect(alder.link.renewals()).toBe(1)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, link: 'live' })
  })

  test('an answer that is none of ours ends nothing: tried again', async () => {
    const alder = await startLive()
    const answer = server.answer
    Object.assign(server, { answer: () => '<html>Welcome to the club wifi</html>' })
    await alder.say(eighth, 5)
    await alder.flush()
    expect(alder.engine.foot().waiting).toBe(1)
    Object.assign(server, { answer })
    clock.pass(5_000)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, link: 'live', refused: [] })
  })

  test('two hundred scores made with no signal arrive once each, in order, in bounded frames', async () => {
    const alder = await startLive()
    alder.link.cut()
    for (let score = 1; score <= 200; score++) await alder.say(eighth, (score % 9) + 1)
    alder.link.plug()
    await alder.flush()
    const own = textsOf().map(text => JSON.parse(text).n)
    expect(own).toEqual(Array.from({ length: 201 }, (_, i) => i + 1))
    expect(alder.engine.foot().waiting).toBe(0)
  })

  test('a waking page asks first and connects anew when nobody answers', async () => {
    const alder = await startLive()
    alder.engine.wake()
    await settle()
    alder.link.up.length = 0
    clock.pass(2_500)
    await settle()
    expect(alder.link.renewals()).toBe(1)
    await alder.flush()
    alder.engine.wake()
    await settle()
    expect(alder.link.up.map(({ what }) => what)).toEqual(['pull'])
    alder.engine.wake()
    await settle()
    expect(alder.link.up).toHaveLength(1)
  })

  test('by looking in alone the same ops arrive', async () => {
    const alder = await startLive()
    const birch = await start('birch', { isTold: false })
    birch.link.plug()
    await birch.say(ninth, 3)
    await birch.flush()
    await alder.say(eighth, 5)
    await alder.flush()
    expect(valuesAt(birch, eighth)).toEqual([])
    birch.link.events().up()
    await flushAll([alder.link, birch.link])
    expect(valuesAt(birch, eighth)).toEqual([5])
    same(alder, birch)
  })
})

describe('a phone that dies', () => {
  test('between the disk and the network sends what is on the disk', async () => {
    const alder = await startLive()
    await alder.say(eighth, 5)
    alder.engine.disconnect()
    const again = await start('alder', { store: alder.store })
    expect(valuesAt(again, eighth)).toEqual([5])
    expect(again.engine.foot().waiting).toBe(1)
    again.link.plug()
    await again.flush()
    expect(valuesStored(eighth)).toEqual([5])
    expect(again.engine.foot().waiting).toBe(0)
  })

  test('and comes back as an old copy never draws a number that the server knows', async () => {
    const alder = await startLive()
    const record = (await alder.store.load(quillmoor))?.record
    if (!record) throw new Error('no record')
    await alder.say(eighth, 5)
    await alder.flush()
    const oldCopy = createMemoryStore()
    await oldCopy.save({ ...record, feeds: [], era: null }, [])
    alder.engine.disconnect()
    const again = await start('alder', { store: oldCopy })
    again.link.plug()
    await again.flush()
    await again.say(eighth, 6)
    await again.flush()
    expect(valuesAt(again, eighth)).toEqual([6])
    expect(again.engine.holding().record.device).toBe('alder')
    expect(again.engine.foot()).toMatchObject({ waiting: 0, refused: [] })
  })

  test('and comes back as an old copy never draws a number that comes back to it by hand', async () => {
    const alder = await startLive()
    const before = await alder.store.load(quillmoor)
    await alder.say(eighth, 5)
    await alder.say(ninth, 5)
    alder.engine.disconnect()
    const texts = [...alder.engine.holding().ops.values()].map(({ text }) => text)
    const oldCopy = createMemoryStore()
    if (before) await oldCopy.save(before.record, before.ops)
    const again = await start('alder', { store: oldCopy })
    await again.engine.bring(texts)
    await again.say(tenth, 3)
    await again.say('g/first/score/rowan/11/1/card', 7)
    again.link.plug()
    await again.flush()
    expect([eighth, ninth, tenth].map(valuesStored)).toEqual([[5], [5], [3]])
    expect(again.engine.holding().record.device).toBe('alder')
    expect(again.engine.foot()).toMatchObject({ waiting: 0, refused: [] })
  })
})

describe('identity taken', () => {
  test('takes a new name, writes the act and what names it again, and goes on unasked', async () => {
    const alder = await startLive()
    const before = await alder.store.load(quillmoor)
    await alder.say(eighth, 5)
    await alder.flush()
    alder.engine.disconnect()
    const oldCopy = createMemoryStore()
    if (before) await oldCopy.save(before.record, before.ops)
    const again = await start('alder', { store: oldCopy })
    await again.say(ninth, 3)
    await again.say(ninth, 4)
    await again.say('g/first/score/rowan/10/1/card', 7)
    again.link.plug()
    await again.flush()
    clock.pass(60_000)
    await again.flush()
    expect(again.engine.holding().record.device).toBe('alder-1')
    expect(valuesAt(again, ninth)).toEqual([4])
    expect(valuesAt(again, eighth)).toEqual([5])
    expect(valuesAt(again, 'g/first/score/rowan/10/1/card')).toEqual([7])
    expect(valuesAt(again, 'key/alder-1')).toMatchObject([{ role: 'desk', invite: 'desk-invite' }])
    expect(again.engine.foot()).toMatchObject({ waiting: 0, refused: [], link: 'live' })
    const birch = await joinLive('birch')
    same(again, birch)
    expect(again.link.hello().device).toBe('alder-1')
  })

  test('of several at once all are written again under one new name, and what the server holds under theirs comes', async () => {
    const alder = await startLive()
    const before = await alder.store.load(quillmoor)
    await alder.say(eighth, 5)
    await alder.say(ninth, 5)
    await alder.flush()
    alder.engine.disconnect()
    const oldCopy = createMemoryStore()
    // Put back to another era: both sides compare, and by their numbers nothing is missing.
    if (before) await oldCopy.save({ ...before.record, era: 'era00000' }, before.ops)
    const again = await start('alder', { store: oldCopy })
    await again.say(tenth, 3)
    await again.say('g/first/score/rowan/11/1/card', 7)
    again.link.plug()
    await again.flush()
    clock.pass(60_000)
    await again.flush()
    expect(again.engine.holding().record).toMatchObject({ device: 'alder-1', formerly: ['alder'] })
    expect([eighth, ninth, tenth].map(key => valuesAt(again, key))).toEqual([[5], [5], [3]])
    expect(again.engine.foot()).toMatchObject({ waiting: 0, refused: [], link: 'live' })
    same(again, await joinLive('birch'))
  })

  test('without an invite it stays visible as refused and holds up nothing', async () => {
    const alder = await startLive()
    await alder.engine.note({ invite: null })
    server.judge = text => (text.includes('/8/1/') ? { kind: 'refused', code: 'identity taken', path: 'n' } : null)
    await alder.say(eighth, 5)
    await alder.say(ninth, 4)
    await alder.flush()
    expect(alder.engine.foot().refused).toMatchObject([{ code: 'identity taken' }])
    expect(valuesAt(alder, eighth)).toEqual([])
    expect(valuesStored(ninth)).toEqual([4])
  })
})

describe('the disk', () => {
  const failing = (store: LogStore): LogStore & { isBroken: boolean } => {
    const guarded = { isBroken: false }
    const guard =
      <A extends unknown[], R>(work: (...args: A) => Promise<R>) =>
      (...args: A): Promise<R> =>
        guarded.isBroken ? Promise.reject(new Error('disk full')) : work(...args)
    return Object.assign(guarded, {
      list: store.list,
      load: store.load,
      save: guard(store.save),
      append: guard(store.append),
      change: guard(store.change),
      remove: store.remove,
    })
  }

  test('when it fails the foot says so, the score is shown and sent, and it is written once the disk is well', async () => {
    const store = failing(createMemoryStore())
    const alder = await start('alder', { store })
    alder.link.plug()
    await found(alder)
    await alder.flush()
    store.isBroken = true
    await alder.say(eighth, 5)
    expect(alder.engine.foot().phone).toBe('failing')
    await alder.flush()
    expect(valuesStored(eighth)).toEqual([5])
    await alder.say(ninth, 4)
    expect((await store.load(quillmoor))?.ops).toHaveLength(1)
    store.isBroken = false
    clock.pass(2_000)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ phone: 'saved', waiting: 0 })
    const stored = await store.load(quillmoor)
    expect(stored?.ops.map(({ op }) => op.n)).toEqual([1, 2, 3])
    expect(stored?.record.nextN).toBe(4)
  })

  test('that stored an act and then said that it failed holds it once, beside what another page wrote', async () => {
    const inner = createMemoryStore()
    let isLying = false
    const lying: LogStore = {
      ...inner,
      append: async (log, make) => {
        const held = await inner.append(log, make)
        if (isLying) throw new Error('connection lost')
        return held
      },
    }
    const alder = await start('alder', { store: lying })
    await alder.say(eighth, 5)
    const page = await start('alder', { store: inner })
    await page.say(ninth, 4)
    isLying = true
    await alder.say(eighth, 6)
    isLying = false
    clock.pass(2_000)
    await alder.engine.reload()
    const keys = (await inner.load(quillmoor))?.ops.map(({ op }) => [op.n, op.facts[0]?.key, op.facts[0]?.value])
    expect(keys).toEqual([
      [1, eighth, 5],
      [2, ninth, 4],
      [3, eighth, 6],
    ])
    expect(valuesAt(alder, eighth)).toEqual([6])
    expect(alder.engine.foot().phone).toBe('saved')
  })

  test('another page of the phone reads what this one wrote', async () => {
    const alder = await startLive()
    const page = await start('alder', { store: alder.store })
    await alder.say(eighth, 5)
    await page.engine.reload()
    expect(valuesAt(page, eighth)).toEqual([5])
    await page.say(ninth, 4)
    await alder.engine.reload()
    expect([...alder.engine.holding().ops.keys()]).toEqual(['alder.1', 'alder.2', 'alder.3'])
    same(alder, page)
  })
})
