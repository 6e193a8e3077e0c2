import { beforeEach, describe, expect, test } from 'vitest'
import type { LogStore } from '#client/sync/log-store.ts'
import { makeKey } from '#core/outing/keys.ts'
import { settle } from './fake-clock.ts'
import { clock, server, start, startLive, startNetwork, valuesStored } from './network.ts'

const eighth = 'g/first/score/rowan/8/1/card'

beforeEach(startNetwork)

/** The storage as a page has it that ends after so many changes: of the next it never hears. */
function endingAfter(store: LogStore, writes: number): LogStore {
  let left = writes
  const change: LogStore['change'] = (log, made) =>
    left-- > 0 ? store.change(log, made) : new Promise(() => undefined)
  return { ...store, change }
}

describe('a server that was put back to a backup', () => {
  /** Alder's phone follows two groups, and the server has lost what it said in both. */
  const putBack = async () => {
    const alder = await startLive()
    await alder.say(makeKey('group', { group: 'second' }), { name: 'Second' })
    await alder.say(eighth, 5)
    await alder.say('g/second/score/rowan/8/1/card', 4)
    await alder.flush()
    server.ops = server.ops.slice(0, 2)
    server.era = 'era00002'
    return alder
  }
  const isWhole = () => [valuesStored(eighth), valuesStored('g/second/score/rowan/8/1/card')]

  test('is in the era of a page only once that page has noted what it lacks', async () => {
    const alder = await putBack()
    alder.link.cut()
    alder.link.plug()
    while (alder.engine.holding().record.era !== 'era00002') {
      expect(alder.engine.foot().waiting).toBe(0)
      alder.link.up.shift()?.deliver()
      alder.link.down.shift()?.deliver()
      await settle()
    }
    expect(alder.engine.foot().waiting).toBe(2)
    await alder.flush()
    expect(isWhole()).toEqual([[5], [4]])
  })

  test.each([0, 1, 2, 3, 4])('gets what it lacks of a page that ended after %i writes', async writes => {
    const alder = await putBack()
    alder.engine.disconnect()
    const ending = await start('alder', { store: endingAfter(alder.store, writes) })
    ending.link.plug()
    await ending.flush()
    ending.engine.disconnect()
    const again = await start('alder', { store: alder.store })
    again.link.plug()
    await again.flush()
    expect(isWhole()).toEqual([[5], [4]])
    expect(again.engine.foot()).toMatchObject({ waiting: 0, link: 'live' })
  })
})

test('a clock that is put back does not keep a page from waking', async () => {
  const alder = await startLive()
  alder.engine.wake()
  await alder.flush()
  clock.pass(-3_600_000)
  alder.engine.wake()
  expect(alder.link.up.map(({ what }) => what)).toContain('pull')
})
