import { describe, expect, it } from 'vitest'
import { fact, inviteFact, makePhone } from '#tests/server/support/phone.ts'
import { openRoom } from '#tests/server/support/room.ts'
import { deskInvite, openRound, scorerInvite, viewerInvite } from '#tests/server/support/round.ts'
import { alreadyStored, later, refused, stored } from '#tests/server/support/verdicts.ts'

describe('a log that the server does not hold', () => {
  it('is made by the phone whose key its first op gives, and whole pushes follow', async () => {
    const alder = makePhone('alder')
    const { push } = await openRoom(alder.hello.log)
    const ops = [alder.op([alder.keyFact('desk')]), alder.op([fact('title', 'Quillmoor')])]
    expect(await push(alder, ...ops)).toEqual([stored(1), stored(2)])
  })

  it('is brought by another phone whose invite stands in its first op, and marked as carried', async () => {
    const alder = makePhone('alder')
    const birch = makePhone('birch', scorerInvite)
    const { push, store } = await openRoom(alder.hello.log)
    const start = alder.op([alder.keyFact('desk'), inviteFact(scorerInvite)])
    const join = birch.op([birch.keyFact('scorer', 'a')])
    expect(await push(birch, start, join)).toEqual([stored(1), stored(2)])
    const rows = await store.read(alder.hello.log, { feed: 'all', after: 0, upTo: 9, limit: 9, textLength: 1e6 })
    expect(rows.map(([, , , carrier]) => carrier)).toEqual(['birch', null])
    expect(await push(alder, start, alder.op([fact('title', 'Quillmoor')]))).toEqual([alreadyStored(1), stored(3)])
  })

  it('is not made by a stranger, nor by an op that is not the first of a push', async () => {
    const [alder, rowan] = [makePhone('alder'), makePhone('rowan')]
    const { push, store } = await openRoom(alder.hello.log)
    const start = alder.op([alder.keyFact('desk'), inviteFact(deskInvite)])
    expect(await push(rowan, start)).toEqual([later('key unknown')])
    const wrongSecret = makePhone('rowan', { ...deskInvite, secret: 'x'.repeat(30) })
    expect(await push(wrongSecret, start)).toEqual([later('key unknown')])
    expect(await push(alder, rowan.op([fact('title', 'Quillmoor')]), start)).toEqual([
      later('key unknown'),
      later('key unknown'),
    ])
    expect(await store.headOf(alder.hello.log)).toBeNull()
  })

  it('is made once when two phones bring it at the same time', async () => {
    const alder = makePhone('alder')
    const birch = makePhone('birch', deskInvite)
    const { push } = await openRoom(alder.hello.log)
    const start = alder.op([alder.keyFact('desk'), inviteFact(deskInvite)])
    const join = birch.op([birch.keyFact('desk')])
    const verdicts = await Promise.all([push(alder, start), push(birch, start, join)])
    expect(verdicts).toEqual([[stored(1)], [alreadyStored(1), stored(2)]])
  })
})

describe('a deleted log', () => {
  it('is deleted by nobody but its desk', async () => {
    const { room, birch, cedar, alder } = await openRound()
    const rowan = makePhone('rowan', viewerInvite)
    const notYours = { kind: 'not deleted', why: 'not yours' }
    for (const { shown } of [birch, cedar, rowan]) expect(await room.delete(shown)).toEqual(notYours)
    expect(await room.delete(makePhone('larch').shown)).toEqual({ kind: 'stranger', why: 'key unknown' })
    expect(await room.pull(alder.shown, { feed: 'all', after: 0 })).toMatchObject({ kind: 'pulled' })
  })

  it('stays deleted for whoever comes later, whatever they bring', async () => {
    const { room, push, alder, birch, cedar, start } = await openRound()
    await room.snapshot(alder.shown)
    await room.delete(alder.shown)
    const deleted = { kind: 'stranger', why: 'deleted' }
    for (const { shown } of [alder, birch, cedar]) {
      expect(await room.pull(shown, { feed: 'all', after: 0 })).toEqual(deleted)
      expect(await room.snapshot(shown)).toEqual(deleted)
      expect(await room.delete(shown)).toEqual(deleted)
    }
    expect(await push(alder, start)).toEqual([refused('deleted', 'log')])
  })

  it('is deleted by the server when nothing came for so long, and its links are cut', async () => {
    const { room, alder, follow, clock, push } = await openRound()
    const link = await follow(alder, 'all')
    await clock.pass(10_000)
    expect(await room.deleteIdle(clock.now() - 10_000)).toEqual([])
    await push(alder, alder.op([fact('title', 'Quillmoor')]))
    await clock.pass(10_000)
    expect(await room.deleteIdle(clock.now() - 10_000)).toEqual([])
    await clock.pass(1)
    expect(await room.deleteIdle(clock.now() - 10_000)).toEqual([alder.hello.log])
    await clock.pass()
    expect(link.partings).toEqual(['deleted'])
  })

  it('cuts its links and refuses what comes', async () => {
    const { push, alder, follow, clock, room } = await openRound()
    const link = await follow(alder, 'all')
    expect(await room.delete(alder.shown)).toEqual({ kind: 'deleted' })
    await clock.pass()
    expect(link.partings).toEqual(['deleted'])
    expect(await push(alder, alder.op([fact('title', 'Quillmoor')]))).toEqual([refused('deleted', 'log')])
  })
})
