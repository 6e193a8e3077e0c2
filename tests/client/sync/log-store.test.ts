import { afterEach, describe, expect, test, vi } from 'vitest'
import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { noMark } from '#client/sync/held-op.ts'
import { createIdbStore } from '#client/sync/idb-store.ts'
import { afterDraw, type Draw, type LogStore } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import type { DeviceId, LogId, OpId } from '#core/values/ids.ts'
import { makeHeld, makeRecord, quillmoor } from './make-held.ts'

const makers: Record<string, () => LogStore> = {
  memory: createMemoryStore,
  indexeddb: () => {
    vi.stubGlobal('indexedDB', new IDBFactory())
    return createIdbStore()
  },
}

const heldOf = ({ device, nextN, nextPlace }: Draw) => makeHeld({ device, n: nextN }, { place: nextPlace })

afterEach(() => {
  vi.unstubAllGlobals()
  vi.restoreAllMocks()
})

describe.each(Object.entries(makers))('a store in %s', (_name, create) => {
  test('holds nothing of a log it was never given', async () => {
    const store = create()
    expect(await store.load(quillmoor)).toBeNull()
    expect(await store.list()).toEqual([])
    await expect(store.append(quillmoor, heldOf)).rejects.toThrow('no log')
  })

  test('draws n and place in the transaction that stores the op', async () => {
    const store = create()
    await store.save(makeRecord(), [])
    const held = await Promise.all([1, 2, 3].map(() => store.append(quillmoor, heldOf)))
    expect(held.map(({ op }) => op.n)).toEqual([1, 2, 3])
    const loaded = await store.load(quillmoor)
    expect(loaded?.ops).toEqual(held)
    expect(loaded?.record).toMatchObject({ nextN: 4, nextPlace: 4 })
  })

  test('spends no number and stores nothing when the op cannot be made', async () => {
    const store = create()
    await store.save(makeRecord(), [])
    const fail = (): never => {
      throw new Error('cannot be made')
    }
    await expect(store.append(quillmoor, fail)).rejects.toThrow('cannot be made')
    expect(await store.load(quillmoor)).toEqual({ record: makeRecord(), ops: [] })
  })

  test('changes marks and the record, and removes, in one step', async () => {
    const store = create()
    await store.save(makeRecord(), [])
    const first = await store.append(quillmoor, heldOf)
    const second = await store.append(quillmoor, heldOf)
    const stored = { ...first, seq: 7, mark: noMark }
    await store.change(quillmoor, {
      put: [stored],
      remove: ['alder.2' as OpId],
      record: record => ({ ...record, era: 'era1era1' }),
    })
    const loaded = await store.load(quillmoor)
    expect(loaded?.ops).toEqual([stored])
    expect(loaded?.ops).not.toContainEqual(second)
    expect(loaded?.record.era).toBe('era1era1')
    expect(loaded?.record.nextN).toBe(3)
  })

  test('saving a record again never gives a drawn number back', async () => {
    const store = create()
    await store.save(makeRecord(), [])
    await store.append(quillmoor, heldOf)
    await store.save(makeRecord({ label: 'Birch' }), [makeHeld({ n: 5 }, { place: 9 })])
    const loaded = await store.load(quillmoor)
    expect(loaded?.record).toMatchObject({ label: 'Birch', nextN: 2, nextPlace: 2 })
    expect(loaded?.ops.map(({ op }) => op.n)).toEqual([1, 5])
    await store.save(makeRecord({ device: 'birch' as DeviceId, nextN: 1 }), [])
    expect((await store.load(quillmoor))?.record.nextN).toBe(1)
  })

  test('counts what waits, put off included, and keeps logs apart', async () => {
    const store = create()
    const other = 'other' as LogId
    await store.save(makeRecord(), [
      makeHeld({ n: 1 }),
      makeHeld({ n: 2 }, { mark: { kind: 'later', reason: 'desk' } }),
      makeHeld({ n: 3 }, { mark: { kind: 'refused', code: 'forbidden', path: '' } }),
      makeHeld({ n: 4 }, { mark: noMark, seq: 1 }),
    ])
    await store.save(makeRecord({ log: other }), [makeHeld({ log: other })])
    const waiting = new Map((await store.list()).map(({ record, waiting }) => [record.log, waiting]))
    expect(waiting).toEqual(
      new Map([
        [quillmoor, 2],
        [other, 1],
      ]),
    )
    await store.remove(other)
    expect(await store.load(other)).toBeNull()
    expect((await store.load(quillmoor))?.ops).toHaveLength(4)
  })
})

describe('the IndexedDB store', () => {
  test('writes with strict durability', async () => {
    const store = makers.indexeddb?.() as LogStore
    await store.save(makeRecord(), [])
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction')
    await store.append(quillmoor, heldOf)
    expect(transaction.mock.calls.map(([, mode, options]) => [mode, options])).toEqual([
      ['readwrite', { durability: 'strict' }],
    ])
  })

  test('opens again once when its connection was lost, and writes the op once', async () => {
    const store = makers.indexeddb?.() as LogStore
    await store.save(makeRecord(), [])
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
      throw new DOMException('The database connection is closing.', 'InvalidStateError')
    })
    await store.append(quillmoor, heldOf)
    const loaded = await store.load(quillmoor)
    expect(loaded?.ops.map(({ op }) => op.n)).toEqual([1])
    expect(loaded?.record).toEqual(afterDraw(makeRecord(), makeHeld()))
  })

  test('keeps a row that it cannot read and shows the others', async () => {
    const store = makers.indexeddb?.() as LogStore
    await store.save(makeRecord(), [makeHeld({ n: 1 }), { ...makeHeld({ n: 2 }), text: '{"half":' }])
    expect((await store.load(quillmoor))?.ops.map(({ op }) => op.n)).toEqual([1])
  })
})
