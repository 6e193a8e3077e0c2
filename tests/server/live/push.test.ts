import { describe, expect, it } from 'vitest'
import type { GroupId } from '#core/values/ids.ts'
import { hashOf, shownOf } from '#server/access/shown.ts'
import { fact, inviteFact, makeInvite, makePhone, score } from '#tests/server/support/phone.ts'
import { openRoom } from '#tests/server/support/room.ts'

const stored = (seq: number) => ({ kind: 'stored', seq })
const alreadyStored = (seq: number) => ({ kind: 'already stored', seq })
const refused = (code: string, path: string) => ({ kind: 'refused', code, path })
const later = (reason: string) => ({ kind: 'later', reason })

const deskInvite = makeInvite('d', 'desk')
const scorerInvite = makeInvite('s', 'scorer', 'a')
const viewerInvite = makeInvite('v', 'viewer')

/** Alder has started the log and given three invites; Birch scores group a; Cedar comes with the desk's invite. */
async function openRound() {
  const alder = makePhone('alder')
  const setup = await openRoom(alder.hello.log)
  const birch = makePhone('birch', scorerInvite)
  const cedar = makePhone('cedar', deskInvite)
  const start = alder.op([alder.keyFact('desk'), ...[deskInvite, scorerInvite, viewerInvite].map(inviteFact)])
  const join = birch.op([birch.keyFact('scorer', 'a')])
  expect(await setup.push(alder, start)).toEqual([stored(1)])
  expect(await setup.push(birch, join)).toEqual([stored(2)])
  return { ...setup, alder, birch, cedar, start, join }
}

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

describe('registering a key', () => {
  it('waits until the phone gives it, then lets it write', async () => {
    const { push, cedar } = await openRound()
    expect(await push(cedar, cedar.op([fact('title', 'Quillmoor')]))).toEqual([later('key unknown')])
    const join = cedar.op([cedar.keyFact('desk')])
    expect(await push(cedar, join, cedar.op([fact('title', 'Quillmoor')]))).toEqual([stored(3), stored(4)])
  })

  it.each([
    ['another role', { role: 'desk', group: null }],
    ['another group', { group: 'b' }],
    ['the hash of another key', { hash: 'f'.repeat(64) }],
    ['another invite', { invite: 'd' }],
  ])('is refused with %s than the invite grants', async (_, changes) => {
    const { push } = await openRound()
    const rowan = makePhone('rowan', scorerInvite)
    const join = rowan.op([rowan.keyFact('scorer', 'a', changes)])
    expect(await push(rowan, join)).toEqual([refused('forbidden', 'facts[0].key')])
  })

  it('gives no right to more in the same op', async () => {
    const { push } = await openRound()
    const rowan = makePhone('rowan', scorerInvite)
    const join = rowan.op([rowan.keyFact('scorer', 'a'), fact('title', 'Mine')])
    expect(await push(rowan, join)).toEqual([refused('forbidden', 'facts[1].key')])
  })

  it('goes to the first writer: a second phone of that name is told so', async () => {
    const { push } = await openRound()
    const second = { ...makePhone('birch', scorerInvite) }
    const secret = 'another-secret-of-birch-'
    const hello = { ...second.hello, key: secret }
    const text = second.op([second.keyFact('scorer', 'a', { hash: hashOf(secret) })], { n: 7 })
    expect(await push({ ...second, hello, shown: shownOf(hello) }, text)).toEqual([
      refused('key taken', 'facts[0].key'),
    ])
  })

  it('that nobody knows is put off, never refused', async () => {
    const { push } = await openRound()
    const rowan = makePhone('rowan')
    expect(await push(rowan, rowan.op([fact('title', 'Quillmoor')]))).toEqual([later('key unknown')])
    const unknownInvite = makePhone('fir', makeInvite('nobodys', 'desk'))
    expect(await push(unknownInvite, unknownInvite.op([unknownInvite.keyFact('desk')]))).toEqual([later('key unknown')])
  })
})

describe('an op', () => {
  it('that comes again is already stored, and with other text its identity is taken', async () => {
    const { push, birch } = await openRound()
    const op = birch.op([score('a', 4)])
    expect(await push(birch, op)).toEqual([stored(3)])
    expect(await push(birch, op, op)).toEqual([alreadyStored(3), alreadyStored(3)])
    expect(await push(birch, birch.op([score('a', 5)], { n: 2 }))).toEqual([refused('identity taken', 'n')])
  })

  it('twice in one push is stored once', async () => {
    const { push, birch } = await openRound()
    const op = birch.op([score('a', 4)])
    expect(await push(birch, op, op)).toEqual([stored(3), alreadyStored(3)])
  })

  it('outside its sender’s rights is refused with the fact at fault; those behind it are not held up', async () => {
    const { push, birch } = await openRound()
    const verdicts = await push(
      birch,
      birch.op([score('a', 4), fact('title', 'Mine')]),
      birch.op([score('b', 4)]),
      birch.op([score('a', 4)]),
    )
    expect(verdicts).toEqual([refused('forbidden', 'facts[1].key'), refused('forbidden', 'facts[0].key'), stored(3)])
  })

  it('of a viewer is refused, but for its own key', async () => {
    const { push } = await openRound()
    const rowan = makePhone('rowan', viewerInvite)
    const verdicts = await push(rowan, rowan.op([rowan.keyFact('viewer')]), rowan.op([score('a', 4)]))
    expect(verdicts).toEqual([stored(3), refused('forbidden', 'facts[0].key')])
  })

  it('with a key outside its scope, of another log, or not canonical is refused', async () => {
    const { push, alder } = await openRound()
    const verdicts = await push(
      alder,
      alder.op([fact('title', 'Quillmoor')], { scope: 'a' as GroupId }),
      alder.op([fact('title', 'Quillmoor')], { log: 'other' as typeof alder.hello.log }),
      ` ${alder.op([fact('title', 'Quillmoor')])}`,
      '{',
    )
    expect(verdicts).toEqual([
      refused('key outside the scope', 'facts[0].key'),
      refused('other log', 'log'),
      refused('not canonical', ''),
      refused('not json', ''),
    ])
  })

  it('with keys of a later version waits', async () => {
    const { push, alder } = await openRound()
    expect(await push(alder, alder.op([fact('weather/wind', 12)]))).toEqual([later('newer')])
  })
})

describe('an op carried for another phone', () => {
  it('is stored within the carrier’s rights, and marked', async () => {
    const { push, birch, alder, store } = await openRound()
    const op = alder.op([score('a', 4)])
    expect(await push(birch, op)).toEqual([stored(3)])
    const rows = await store.read(alder.hello.log, { feed: 'all', after: 2, upTo: 9, limit: 9, textLength: 1e6 })
    expect(rows.map(([, , , carrier]) => carrier)).toEqual(['birch'])
  })

  it('beyond them waits for the desk, is shown there, and one push takes it in', async () => {
    const { push, birch, alder, follow, store, clock } = await openRound()
    const desk = await follow(alder, 'all')
    const op = makePhone('rowan').op([fact('title', 'Quillmoor')])
    expect(await push(birch, op)).toEqual([later('desk')])
    expect(await push(birch, op)).toEqual([later('desk')])
    await clock.pass()
    expect(desk.offers).toEqual([{ ops: [{ text: op, carrier: 'birch' }] }])
    expect((await follow(alder, 'all')).offers).toEqual([{ ops: [{ text: op, carrier: 'birch' }] }])
    expect(await push(alder, op)).toEqual([stored(3)])
    expect(await push(birch, op)).toEqual([alreadyStored(3)])
    expect(await store.offersOf(alder.hello.log)).toEqual([])
  })

  it('is shown to no scorer', async () => {
    const { push, birch, follow, clock } = await openRound()
    const link = await follow(birch, 'g/a')
    await push(birch, makePhone('rowan').op([fact('title', 'Quillmoor')]))
    await clock.pass()
    expect(link.offers).toEqual([])
  })

  it('under an identity that is taken is refused at once', async () => {
    const { push, birch, alder } = await openRound()
    const forged = alder.op([fact('title', 'Quillmoor')], { n: 1 })
    expect(await push(birch, forged)).toEqual([refused('identity taken', 'n')])
  })
})

describe('a voided key', () => {
  it('cuts the link, and its next op is refused', async () => {
    const { push, birch, alder, follow, clock, room } = await openRound()
    const link = await follow(birch, 'g/a')
    await push(alder, alder.op([fact('void/key/birch', true)]))
    await clock.pass()
    expect(link.partings).toEqual(['voided'])
    expect(await push(birch, birch.op([score('a', 4)]))).toEqual([refused('voided', '')])
    expect(await room.pull(birch.shown, { feed: 'all', after: 0 })).toEqual({ kind: 'stranger', why: 'voided' })
  })

  it('works again when the desk takes the void back', async () => {
    const { push, birch, alder } = await openRound()
    await push(alder, alder.op([fact('void/key/birch', true)]))
    await push(alder, alder.op([fact('void/key/birch', null, ['alder.2'])]))
    expect(await push(birch, birch.op([score('a', 4)]))).toEqual([stored(5)])
  })

  it('cannot come back by its invite', async () => {
    const { push, birch, alder } = await openRound()
    await push(alder, alder.op([fact('void/key/birch', true)]))
    expect(await push(birch, birch.op([birch.keyFact('scorer', 'a')]))).toEqual([refused('voided', '')])
  })
})

describe('a voided invite', () => {
  it('lets nobody in, and leaves those who came by it', async () => {
    const { push, birch, alder, room } = await openRound()
    await push(alder, alder.op([fact('void/invite/s', true)]))
    expect(await push(birch, birch.op([score('a', 4)]))).toEqual([stored(4)])
    const rowan = makePhone('rowan', scorerInvite)
    expect(await push(rowan, rowan.op([rowan.keyFact('scorer', 'a')]))).toEqual([refused('voided', '')])
    expect(await room.pull(rowan.shown, { feed: 'all', after: 0 })).toEqual({ kind: 'stranger', why: 'voided' })
  })

  it('cannot be taken over by a scorer who knows its hash', async () => {
    const { push, birch } = await openRound()
    const grant = {
      ...inviteFact(deskInvite),
      value: { ...(inviteFact(deskInvite).value as object), role: 'scorer', group: 'a' },
    }
    expect(await push(birch, birch.op([grant]))).toEqual([refused('key taken', 'facts[0].key')])
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

describe('an op that its own phone may not write', () => {
  const title = () => fact('title', 'Ours')

  it('is stored already where a desk has brought it, whoever sends it again', async () => {
    const { push, alder, birch } = await openRound()
    const text = birch.op([title()])
    expect(await push(birch, text)).toEqual([refused('forbidden', 'facts[0].key')])
    expect(await push(alder, text)).toEqual([stored(3)])
    expect(await push(birch, text)).toEqual([alreadyStored(3)])
  })

  it('hears first that its name is taken', async () => {
    const { push, alder, birch } = await openRound()
    const [one, other] = [birch.op([title()], { n: 7 }), birch.op([title()], { n: 7, act: 'another act' })]
    expect(await push(alder, one)).toEqual([stored(3)])
    expect(await push(birch, other)).toEqual([refused('identity taken', 'n')])
  })
})
