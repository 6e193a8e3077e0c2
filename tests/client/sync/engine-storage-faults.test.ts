import { beforeEach, describe, expect, test } from 'vitest'
import type { LogStore } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { quillmoor } from './make-held.ts'
import { clock, same, start, startLive, startNetwork, valuesStored } from './network.ts'
import { found, valuesAt } from './phone.ts'

const eighth = 'g/first/score/rowan/8/1/card'
const ninth = 'g/first/score/rowan/9/1/card'
const tenth = 'g/first/score/rowan/10/1/card'

beforeEach(startNetwork)

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
