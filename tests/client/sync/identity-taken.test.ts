import { beforeEach, describe, expect, test } from 'vitest'
import { createMemoryStore } from '#client/sync/memory-store.ts'
import { quillmoor } from './make-held.ts'
import { clock, joinLive, same, server, start, startLive, startNetwork, valuesStored } from './network.ts'
import { valuesAt } from './phone.ts'

const eighth = 'g/first/score/rowan/8/1/card'
const ninth = 'g/first/score/rowan/9/1/card'
const tenth = 'g/first/score/rowan/10/1/card'

beforeEach(startNetwork)

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
