import { afterEach, expect, test, vi } from 'vitest'
import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { openDB } from 'idb'
import { createIdbStore } from '#client/sync/idb-store.ts'
import { makeHeld, makeRecord, quillmoor } from './make-held.ts'

afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

test('an open that another page holds up ends after three seconds, and the next call tries again', async () => {
  const disk = new IDBFactory()
  const store = createIdbStore()
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] })
  vi.stubGlobal('indexedDB', { open: () => new IDBOpenDBRequest() })
  const held = store.list().catch((error: Error) => error.message)
  await vi.advanceTimersByTimeAsync(2_999)
  let isOver = false
  void held.then(() => {
    isOver = true
  })
  await vi.advanceTimersByTimeAsync(0)
  expect(isOver).toBe(false)
  await vi.advanceTimersByTimeAsync(1)
  expect(await held).toBe('storage does not answer')
  vi.useRealTimers()
  vi.stubGlobal('indexedDB', disk)
  expect(await store.list()).toEqual([])
})

test('a browser without a storage says so at once, every time', async () => {
  vi.stubGlobal('indexedDB', undefined)
  const store = createIdbStore()
  await expect(store.list()).rejects.toThrow()
  await expect(store.save(makeRecord(), [])).rejects.toThrow()
})

test('a storage of a newer version is left as it is', async () => {
  vi.stubGlobal('indexedDB', new IDBFactory())
  await createIdbStore().save(makeRecord(), [makeHeld()])
  const newer = await openDB('six-threes', 2, { upgrade: db => void db.createObjectStore('later') })
  newer.close()
  const store = createIdbStore()
  await expect(store.load(quillmoor)).rejects.toThrow()
  await expect(store.save(makeRecord({ label: 'Birch' }), [])).rejects.toThrow()
  const kept = await openDB('six-threes', 2)
  expect([...kept.objectStoreNames]).toEqual(['later', 'logs', 'ops'])
  expect(await kept.getAll('logs')).toEqual([makeRecord()])
  expect(await kept.count('ops')).toBe(1)
  kept.close()
})
