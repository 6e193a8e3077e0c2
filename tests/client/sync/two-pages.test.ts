import { describe, expect, test } from 'vitest'
import { createEngine, type Engine } from '#client/sync/engine.ts'
import type { Alone } from '#client/sync/keeper.ts'
import type { LogStore } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { renamingWith } from '#client/sync/rename.ts'
import type { DeviceId } from '#core/values/ids.ts'
import { createFakeClock, settle } from './fake-clock.ts'
import { createFakeLink } from './fake-link.ts'
import { createFakeServer } from './fake-server.ts'
import { makeRecord, quillmoor } from './make-held.ts'
import { hash } from './phone.ts'

/** One phone's disk that can be broken, and the lock that its pages share. */
async function makeDisk() {
  const inner = createMemoryStore()
  const disk = { isBroken: false }
  const guard =
    <A extends unknown[], R>(work: (...args: A) => Promise<R>) =>
    (...args: A): Promise<R> =>
      disk.isBroken ? Promise.reject(new Error('disk full')) : work(...args)
  const store: LogStore = {
    ...inner,
    load: guard(inner.load),
    save: guard(inner.save),
    append: guard(inner.append),
    change: guard(inner.change),
  }
  await inner.save(makeRecord({}), [])
  const clock = createFakeClock()
  let holder: string | null = null
  const aloneFor = (page: string): Alone => ({
    take: async () => {
      holder ??= page
      return holder === page
    },
    give: () => {
      if (holder === page) holder = null
    },
  })
  const openPage = async (name: string): Promise<Engine> => {
    const stored = await inner.load(quillmoor)
    if (!stored) throw new Error('nothing stored')
    const link = createFakeLink(createFakeServer(), clock)
    const made = { device: () => 'again' as DeviceId, secret: () => 'N'.repeat(22), hash }
    const renaming = async () => renamingWith(made)
    const changed = () => undefined
    return createEngine({ store, link, clock, renaming, stored, isSaved: true, alone: aloneFor(name), changed })
  }
  const crash = (page: string) => aloneFor(page).give()
  return { inner, disk, clock, openPage, crash }
}

const say = (engine: Engine, value: string) =>
  engine.write(() => ({ scope: null, act: 'said', facts: [{ key: 'title', value, replaces: [] }] }))

describe('two pages of one phone', () => {
  test('that write at once hold both acts in the order of their numbers, before either has told the other', async () => {
    const { openPage } = await makeDisk()
    const [first, second] = [await openPage('first'), await openPage('second')]
    await say(first, 'one')
    await say(second, 'two')
    expect([...second.holding().ops.values()].map(({ op }) => [op.n, op.facts[0]?.value])).toEqual([
      [1, 'one'],
      [2, 'two'],
    ])
  })

  test('never draw the same number while the disk fails: one writes, the other says where', async () => {
    const { inner, disk, clock, openPage } = await makeDisk()
    const [first, second] = [await openPage('first'), await openPage('second')]
    disk.isBroken = true
    expect((await say(first, 'one'))?.op.n).toBe(1)
    expect(await say(second, 'two')).toBeNull()
    expect((await say(first, 'three'))?.op.n).toBe(2)
    expect([first.foot().phone, second.foot().phone]).toEqual(['failing', 'elsewhere'])
    expect(second.holding().ops.size).toBe(0)
    disk.isBroken = false
    clock.pass(2_000)
    await settle()
    expect([first.foot().phone, second.foot().phone]).toEqual(['saved', 'saved'])
    await second.reload()
    expect((await say(second, 'four'))?.op.n).toBe(3)
    const stored = await inner.load(quillmoor)
    expect(stored?.ops.map(({ op }) => [op.n, op.facts[0]?.value])).toEqual([
      [1, 'one'],
      [2, 'three'],
      [3, 'four'],
    ])
  })

  test('go on in the other page when the one that wrote is gone', async () => {
    const { disk, openPage, crash } = await makeDisk()
    const [first, second] = [await openPage('first'), await openPage('second')]
    disk.isBroken = true
    await say(first, 'one')
    expect(await say(second, 'two')).toBeNull()
    crash('first')
    expect((await say(second, 'two'))?.op.facts[0]?.value).toBe('two')
    expect(second.foot().phone).toBe('failing')
  })
})
