import { beforeEach, describe, expect, test } from 'vitest'
import { settle } from './fake-clock.ts'
import { clock, same, server, start, startLive, startNetwork, textsOf, valuesStored } from './network.ts'
import { flushAll, valuesAt } from './phone.ts'

const eighth = 'g/first/score/rowan/8/1/card'
const ninth = 'g/first/score/rowan/9/1/card'

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
