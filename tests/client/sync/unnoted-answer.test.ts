import { beforeEach, expect, test } from 'vitest'
import type { LogStore } from '#client/sync/log-store.ts'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { clock, server, start, startLive, startNetwork, textsOf, valuesStored } from './network.ts'
import { found, type Phone } from './phone.ts'

const eighth = 'g/first/score/rowan/8/1/card'

beforeEach(startNetwork)

/** A phone whose storage takes new ops and cannot note what became of them. */
async function startForgetful(): Promise<Phone & { store: LogStore & { canNote: boolean } }> {
  const inner = createMemoryStore()
  const store = Object.assign({ canNote: true }, inner)
  const noted =
    <A extends unknown[]>(work: (...args: A) => Promise<void>) =>
    (...args: A): Promise<void> =>
      store.canNote ? work(...args) : Promise.reject(new Error('connection lost'))
  Object.assign(store, { change: noted(inner.change), save: noted(inner.save) })
  const alder = await start('alder', { store })
  alder.link.plug()
  await found(alder)
  await alder.flush()
  return { ...alder, store }
}

test('an answer that cannot be noted is no failure: nothing is marked, and the op is stored once', async () => {
  const alder = await startForgetful()
  alder.store.canNote = false
  await alder.say(eighth, 5)
  await alder.flush()
  expect(alder.engine.foot()).toMatchObject({ waiting: 0, refused: [], link: 'live' })
  alder.store.canNote = true
  clock.pass(2_000)
  await alder.flush()
  expect(alder.engine.foot()).toMatchObject({ phone: 'saved', waiting: 0, refused: [] })
  expect(valuesStored(eighth)).toEqual([5])
})

test('a page that ended before its answer was noted sends again, and the op is stored once', async () => {
  const alder = await startForgetful()
  alder.store.canNote = false
  await alder.say(eighth, 5)
  await alder.flush()
  alder.engine.disconnect()
  alder.store.canNote = true
  const again = await start('alder', { store: alder.store })
  expect(again.engine.foot().waiting).toBe(1)
  again.link.plug()
  await again.flush()
  expect(again.engine.foot()).toMatchObject({ waiting: 0, refused: [] })
  expect(valuesStored(eighth)).toEqual([5])
})

test('a frame that a network never lets through passes in smaller ones, all of it once and in order', async () => {
  const alder = await startLive()
  alder.link.cut()
  for (let score = 1; score <= 60; score++) await alder.say(eighth, (score % 9) + 1)
  const answer = server.answer
  const isTooLong = (question: string, message: unknown): boolean =>
    question === 'push' && (message as { ops: string[] }).ops.length > 10
  Object.assign(server, {
    answer: (question: string, message: unknown) =>
      isTooLong(question, message) ? '<html>Too large</html>' : answer(question, message),
  })
  alder.link.plug()
  for (let turn = 0; turn < 40 && alder.engine.foot().waiting > 0; turn++) {
    await alder.flush()
    clock.pass(4_000)
  }
  expect(alder.engine.foot()).toMatchObject({ waiting: 0, refused: [] })
  expect(textsOf().map(text => JSON.parse(text).n)).toEqual(Array.from({ length: 61 }, (_, i) => i + 1))
})
