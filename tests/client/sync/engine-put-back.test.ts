import { beforeEach, describe, expect, test } from 'vitest'
import { makeKey } from '#core/outing/keys.ts'
import { settle } from './fake-clock.ts'
import { clock, server, start, startLive, startNetwork, valuesStored } from './network.ts'

const eighth = 'g/first/score/rowan/8/1/card'

beforeEach(startNetwork)

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

  test('gets what it lacks of a page that ended while they compared', async () => {
    const alder = await putBack()
    alder.link.cut()
    alder.link.plug()
    for (let step = 0; step < 3; step++) {
      alder.link.up.shift()?.deliver()
      alder.link.down.shift()?.deliver()
      alder.link.cut()
      alder.link.plug()
      await settle()
    }
    const again = await start('alder', { store: alder.store })
    alder.engine.disconnect()
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
