import { beforeEach, describe, expect, test } from 'vitest'
import { settle } from './fake-clock.ts'
import { quillmoor } from './make-held.ts'
import { clock, joinLive, same, server, start, startLive, startNetwork, textsOf, valuesStored } from './network.ts'
import { flushAll, found, valuesAt } from './phone.ts'

const eighth = 'g/first/score/rowan/8/1/card'
const ninth = 'g/first/score/rowan/9/1/card'

beforeEach(startNetwork)

describe('writing', () => {
  test('is on the disk before it is shown, and shown before it is sent', async () => {
    const phone = await start('alder')
    const done = phone.say(eighth, 5)
    expect(valuesAt(phone, eighth)).toEqual([])
    expect(phone.engine.foot().phone).toBe('saving')
    await done
    expect(phone.engine.foot()).toMatchObject({ phone: 'saved', waiting: 1, link: 'connecting' })
    expect(valuesAt(phone, eighth)).toEqual([5])
    expect((await phone.store.load(quillmoor))?.ops).toHaveLength(1)
    expect(phone.link.up).toEqual([])
  })

  test('taps that come together each see the one before', async () => {
    const phone = await start('alder')
    await Promise.all([phone.say(eighth, 4), phone.say(eighth, 5), phone.say(eighth, 6)])
    expect(valuesAt(phone, eighth)).toEqual([6])
    expect([...phone.engine.holding().ops.keys()]).toEqual(['alder.1', 'alder.2', 'alder.3'])
  })

  test('an act with nothing to say spends no number', async () => {
    const phone = await start('alder')
    expect(await phone.engine.write(() => ({ scope: null, act: 'nothing', facts: [] }))).toBeNull()
    await phone.say(eighth, 4)
    expect([...phone.engine.holding().ops.keys()]).toEqual(['alder.1'])
  })
})

describe('two phones', () => {
  test('hear from each other, and nothing waits', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    await alder.say(eighth, 5)
    await flushAll([alder.link, birch.link])
    expect(valuesAt(birch, eighth)).toEqual([5])
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, link: 'live', phone: 'saved' })
    same(alder, birch)
  })

  test('follow the one group, not everything', async () => {
    const alder = await startLive()
    expect(alder.engine.holding().record.feeds.map(([feed]) => feed)).toContain('g/first')
  })

  test('that did not see each other have two scores, and both know it', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    birch.link.cut()
    await birch.say(eighth, 6)
    await alder.say(eighth, 5)
    await alder.flush()
    birch.link.plug()
    await flushAll([alder.link, birch.link])
    expect(valuesAt(alder, eighth).toSorted()).toEqual([5, 6])
    same(alder, birch)
  })

  test('a lost tell is a gap, and the gap is pulled', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    await alder.say(eighth, 5)
    await alder.flush()
    birch.link.down.length = 0
    await alder.say(ninth, 4)
    await flushAll([alder.link, birch.link])
    expect(valuesAt(birch, eighth)).toEqual([5])
    same(alder, birch)
  })

  test('the same tells twice and in any order change nothing', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    await alder.say(eighth, 5)
    await alder.say(ninth, 4)
    await alder.flush()
    const tells = birch.link.down.splice(0)
    birch.link.down.push(...tells.toReversed(), ...tells)
    await flushAll([alder.link, birch.link])
    same(alder, birch)
    expect([...birch.engine.holding().ops.values()].map(({ place }) => place)).toHaveLength(server.ops.length)
  })

  test('what is told while an answer is under way is not lost', async () => {
    const alder = await startLive()
    const birch = await start('birch')
    birch.link.plug()
    await settle()
    birch.link.up.shift()?.deliver()
    await alder.say(eighth, 5)
    await alder.flush()
    await flushAll([alder.link, birch.link])
    same(alder, birch)
  })
})

describe('what crosses on the way', () => {
  test('a tell right behind the answer of a phone that comes back is not lost', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    birch.link.cut()
    birch.link.plug()
    await settle()
    birch.link.up.shift()?.deliver()
    await alder.say(eighth, 5)
    await alder.flush()
    expect(birch.link.down.map(({ what }) => what)).toEqual(['follow', 'tell'])
    for (const letter of birch.link.down.splice(0)) letter.deliver()
    await settle()
    expect(birch.link.up).toEqual([])
    expect(valuesAt(birch, eighth)).toEqual([5])
  })

  test('a refusal that comes behind the op itself takes nothing out of the fold', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    server.judge = () => ({ kind: 'refused', code: 'forbidden', path: '' })
    await alder.say(eighth, 5)
    await settle()
    alder.link.up.shift()?.deliver()
    server.judge = () => null
    await birch.engine.bring([[...alder.engine.holding().ops.values()].at(-1)?.text ?? ''])
    await flushAll([birch.link])
    alder.link.down.reverse()
    await flushAll([alder.link])
    expect(valuesAt(alder, eighth)).toEqual([5])
    expect(alder.engine.foot()).toMatchObject({ refused: [], waiting: 0 })
    same(alder, birch)
  })
})

describe('verdicts', () => {
  test('a refused op leaves the fold, stays visible with its reason, and may be taken off the list', async () => {
    const alder = await startLive()
    server.judge = text =>
      text.includes('/8/1/') ? { kind: 'refused', code: 'forbidden', path: 'facts[0].key' } : null
    await alder.say(eighth, 5)
    await alder.say(ninth, 4)
    await alder.flush()
    expect(valuesAt(alder, eighth)).toEqual([])
    expect(valuesAt(alder, ninth)).toEqual([4])
    const [refused] = alder.engine.foot().refused
    expect(refused).toMatchObject({ code: 'forbidden', path: 'facts[0].key', op: { n: 2 } })
    expect(alder.engine.foot().waiting).toBe(0)
    await alder.engine.forget('alder.2' as never)
    expect(alder.engine.foot().refused).toEqual([])
    await alder.say(eighth, 6)
    expect([...alder.engine.holding().ops.keys()].at(-1)).toBe('alder.4')
  })

  test('an op that comes down is in the fold, whatever this phone was told before', async () => {
    const alder = await startLive()
    server.judge = () => ({ kind: 'refused', code: 'forbidden', path: '' })
    await alder.say(eighth, 5)
    await alder.flush()
    server.judge = () => null
    const text = [...alder.engine.holding().ops.values()].at(-1)?.text ?? ''
    const birch = await joinLive('birch')
    await birch.engine.bring([text])
    await flushAll([alder.link, birch.link])
    expect(valuesAt(alder, eighth)).toEqual([5])
    expect(alder.engine.foot().refused).toEqual([])
    same(alder, birch)
  })

  test('what is put off holds up nobody, is counted, and is tried again on the next link', async () => {
    const alder = await startLive()
    server.judge = text => (text.includes('/8/1/') ? { kind: 'later', reason: 'desk' } : null)
    await alder.say(eighth, 5)
    await alder.say(ninth, 4)
    await alder.flush()
    expect(valuesStored(ninth)).toEqual([4])
    expect(alder.engine.foot()).toMatchObject({ waiting: 1, putOff: [{ reason: 'desk', count: 1 }] })
    server.judge = () => null
    alder.link.cut()
    alder.link.plug()
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, putOff: [] })
  })

  test('a busy server is asked again soon', async () => {
    const alder = await startLive()
    server.judge = () => ({ kind: 'later', reason: 'busy' })
    await alder.say(eighth, 5)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ waiting: 1, putOff: [] })
    server.judge = () => null
    clock.pass(2_000)
    await alder.flush()
    expect(alder.engine.foot().waiting).toBe(0)
  })

  test('a verdict of a newer server puts off', async () => {
    const alder = await startLive()
    server.judge = () => ({ kind: 'weighed', grams: 3 }) as never
    await alder.say(eighth, 5)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ waiting: 1, putOff: [{ reason: 'newer', count: 1 }] })
  })
})

describe('eras', () => {
  test('a server that comes back with less is filled from a phone, refused ops left out', async () => {
    const alder = await startLive()
    server.judge = text => (text.includes('/8/1/') ? { kind: 'refused', code: 'forbidden', path: '' } : null)
    await alder.say(eighth, 5)
    await alder.say(ninth, 4)
    await alder.flush()
    server.judge = () => null
    server.ops = server.ops.slice(0, 1)
    server.era = 'era00002'
    alder.link.cut()
    alder.link.plug()
    await alder.flush()
    expect(valuesStored(ninth)).toEqual([4])
    expect(valuesStored(eighth)).toEqual([])
    expect(alder.engine.holding().record.era).toBe('era00002')
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, link: 'live' })
  })

  test('a server without the log gets all of it, the founder first', async () => {
    const alder = await startLive()
    const birch = await joinLive('birch')
    await birch.say(eighth, 5)
    await flushAll([alder.link, birch.link])
    const before = textsOf()
    server.ops = []
    server.isKnown = false
    server.era = 'era00003'
    birch.link.cut()
    birch.link.plug()
    await flushAll([birch.link])
    expect(textsOf()).toEqual(before)
    expect(birch.engine.foot()).toMatchObject({ waiting: 0, link: 'live', stranger: null })
  })

  test('an outing started with no signal is brought when a server is met', async () => {
    server.isKnown = false
    const alder = await start('alder')
    await found(alder)
    await alder.say(eighth, 5)
    expect(alder.engine.foot()).toMatchObject({ waiting: 2, phone: 'saved' })
    alder.link.plug()
    await alder.flush()
    expect(valuesStored(eighth)).toEqual([5])
    expect(alder.engine.foot()).toMatchObject({ waiting: 0, link: 'live' })
  })

  test('a stranger is told so, and is let in later', async () => {
    const answer = server.answer
    Object.assign(server, { answer: () => ({ kind: 'stranger', why: 'key unknown' }) })
    const alder = await start('alder')
    alder.link.plug()
    await alder.say(eighth, 5)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ link: 'stranger', stranger: 'key unknown', waiting: 1 })
    Object.assign(server, { answer })
    clock.pass(5_000)
    await alder.flush()
    expect(alder.engine.foot()).toMatchObject({ link: 'live', stranger: null, waiting: 0 })
  })
})
