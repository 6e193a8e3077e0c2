import { describe, expect, it } from 'vitest'
import { roles } from '#core/outing/facts.ts'
import type { InviteId, LogId } from '#core/values/ids.ts'
import { createDoor } from '#server/access/door.ts'
import { createRoom } from '#server/live/room.ts'
import { createWelcome } from '#server/live/welcome.ts'
import type { Feed } from '#shared/messages/feed.ts'
import { fact, makePhone, type Phone, score } from '#tests/server/support/phone.ts'
import { makeLink } from '#tests/server/support/room.ts'
import { later, refused } from '#tests/server/support/verdicts.ts'
import { invites, type Outing, openOuting, outsiders, storedKind } from './outing.ts'

const feeds: readonly Feed[] = ['all', 'g/a', 'g/b', 'g/nowhere']

/** Stands in the other log alone: it must come to nobody of this one. */
const secretOfOther = 'Heatherwick'

/** An outing beside another, and a phone of that one's desk; what waits for the desk, and who asks, in both. */
async function openTwo() {
  const outing = await openOuting()
  const { room, members, store, clock } = outing
  const door = createDoor(clock.now)
  const welcome = createWelcome({ door, store, weigh: room.weigh, changed: () => {} })
  const stranger = makePhone('stranger', null, 'other-log')
  const push = async (phone: Phone, ...ops: string[]) => (await room.push(phone.shown, { ops })).verdicts
  const start = stranger.op([stranger.keyFact('desk'), fact('title', secretOfOther)])
  expect(await push(stranger, start, stranger.op([score('a', 7)]))).toEqual([storedKind, storedKind])
  for (const log of ['quillmoor', 'other-log'] as LogId[]) {
    const words = door.allot({ log, group: 'a' as never })
    expect(words).not.toBeNull()
    expect(door.open({ log, group: 'a' as never }, log === 'other-log' ? secretOfOther : 'Maple')).not.toBeNull()
  }
  const offered = makePhone('larch').op([fact('title', 'Offered')])
  expect(await push(members.scorer, offered)).toEqual([later('desk')])
  return { ...outing, welcome, door, stranger, offered, pushAny: push }
}

type Two = Awaited<ReturnType<typeof openTwo>>

/** Every answer that a phone can get, by the question. */
async function answersTo({ room, welcome, era }: Two, phone: Phone) {
  const { shown } = phone
  const known = await era()
  const answers: [question: string, answer: unknown][] = []
  for (const feed of feeds) {
    const link = makeLink(phone)
    answers.push([`follow ${feed}`, await room.follow(link, { era: known, feeds: [{ feed, after: 0 }] })])
    answers.push([`pull ${feed}`, await room.pull(shown, { feed, after: 0 })])
    answers.push([`exchange ${feed}`, await room.exchange(shown, { feed, here: [] })])
    room.leave(link)
  }
  answers.push(['snapshot', await room.snapshot(shown)])
  answers.push(['offers', await room.offers(shown)])
  answers.push(['askers', await welcome.askers(shown)])
  answers.push(['words', await welcome.words(shown, { group: 'b' as never })])
  answers.push(['admit', await welcome.admit(shown, { asker: 'nobody', invite: null })])
  return answers
}

const readers: readonly (readonly [who: string, make: (outing: Outing) => Phone])[] = [
  ...roles.map(role => [`a ${role}`, ({ members }: Outing) => members[role]] as const),
  ['a guest by the desk’s invite', () => makePhone('fir', invites.desk)],
  ['a guest by a scorer’s invite', () => makePhone('fir', invites.scorer)],
  ['a guest by the viewers’ invite', () => makePhone('fir', invites.viewer)],
]

describe('any key and any invite of an outing', () => {
  it.each(readers)('reads all of it, and nothing of another: %s', async (_, make) => {
    const two = await openTwo()
    const phone = make(two)
    for (const [question, answer] of await answersTo(two, phone)) {
      expect([question, answer]).not.toEqual([question, expect.objectContaining({ kind: 'stranger' })])
      expect([question, JSON.stringify(answer)]).not.toEqual([question, expect.stringContaining(secretOfOther)])
      expect([question, JSON.stringify(answer)]).not.toEqual([question, expect.stringContaining('other-log')])
    }
    const pulled = await two.room.pull(phone.shown, { feed: 'all', after: 0 })
    expect(pulled).toMatchObject({ kind: 'pulled', part: { upTo: 1, more: false } })
  })

  it.each(readers)('opens no other log, by its name or beside it: %s', async (_, make) => {
    const two = await openTwo()
    const phone = make(two)
    const elsewhere = { ...phone, shown: { ...phone.shown, log: 'other-log' as LogId } }
    for (const [question, answer] of await answersTo(two, elsewhere)) {
      expect([question, answer]).toEqual([question, { kind: 'stranger', why: 'key unknown' }])
    }
  })

  it.each(readers)('hears nothing unasked of another log: %s', async (_, make) => {
    const two = await openTwo()
    const link = makeLink(make(two))
    const follow = { era: await two.era(), feeds: feeds.map(feed => ({ feed, after: 0 })) }
    expect(await two.room.follow(link, follow)).toMatchObject({ kind: 'followed' })
    await two.clock.pass()
    const before = JSON.stringify(link)
    await two.pushAny(two.stranger, two.stranger.op([score('a', 5)]), two.stranger.op([fact('title', secretOfOther)]))
    await two.clock.pass(2_000)
    expect(JSON.stringify(link)).toBe(before)
    expect(before).not.toContain(secretOfOther)
    await two.push(two.members.desk, two.members.desk.op([score('b', 5)], { scope: 'b' as never }))
    await two.clock.pass(2_000)
    expect(link.tells.map(({ feed, ops }) => [feed, ops.length])).toEqual([
      ['g/b', 1],
      ['all', 1],
    ])
  })
})

describe('what waits for the desk, and who asks', () => {
  it.each([
    ['a desk', ({ members }: Outing) => members.desk, 1, 1],
    ['a scorer of the group', ({ members }: Outing) => members.scorer, 0, 1],
    ['a scorer of another group', ({ cedar }: Outing) => cedar, 0, 0],
    ['a viewer', ({ members }: Outing) => members.viewer, 0, 0],
    ['an owner', ({ members }: Outing) => members.owner, 0, 0],
    ['a guest by the desk’s invite', () => makePhone('fir', invites.desk), 0, 0],
    ['a guest by a scorer’s invite', () => makePhone('fir', invites.scorer), 0, 0],
  ] as const)('is shown to those who can answer: %s', async (_, make, offers, askers) => {
    const two = await openTwo()
    const { shown } = make(two)
    const offered = await two.room.offers(shown)
    expect(offered).toEqual({ kind: 'offers', ops: offers ? [{ text: two.offered, carrier: 'birch' }] : [] })
    const asked = await two.welcome.askers(shown)
    expect(asked).toMatchObject({ kind: 'askers', spoken: { length: askers }, askers: { length: askers } })
    const [asker] = two.door.askers('quillmoor' as LogId)
    const { id, secret } = invites.scorer
    const admitted = await two.welcome.admit(shown, { asker: asker?.asker ?? '', invite: { id, secret } })
    expect(admitted.kind).toBe(askers ? 'admitted' : 'not admitted')
  })
})

describe('everybody else', () => {
  it.each(outsiders.filter(([who]) => !who.startsWith('a guest') || who.includes('voided')))(
    'reads nothing and is told why: %s',
    async (_, make, verdict) => {
      const two = await openTwo()
      const isOut = JSON.stringify(verdict).includes('voided')
      const why = { kind: 'stranger', why: isOut ? 'voided' : 'key unknown' }
      for (const [question, answer] of await answersTo(two, make(two))) {
        expect([question, answer]).toEqual([question, why])
      }
    },
  )
})

describe('a phone that is taken out', () => {
  it.each([
    ['by its key', 'void/key/birch', true],
    ['by its key taken back', 'key/birch', null],
  ])('is cut at once, hears nothing more, and comes back by nothing: %s', async (_, key, value) => {
    const { room, push, follow, members, clock, era } = await openOuting()
    const { desk, scorer } = members
    const link = await follow(scorer, ...feeds)
    const heard = link.tells.length
    expect(await push(desk, desk.op([fact(key, value)]))).toEqual([storedKind])
    await clock.pass()
    expect(link.partings).toEqual(['voided'])
    const told = link.tells.length
    expect(told - heard).toBeLessThanOrEqual(feeds.length)
    expect(await push(desk, desk.op([score('a', 3)]))).toEqual([storedKind])
    await clock.pass(2_000)
    expect(link.tells).toHaveLength(told)
    // With its key, with its invite, and as a phone of that name with a new key.
    const again = makePhone('birch', invites.scorer)
    const newKey = { ...again, shown: { ...again.shown, keyHash: 'f'.repeat(64) } }
    for (const phone of [scorer, again, newKey]) {
      const answer = await room.follow(makeLink(phone), { era: await era(), feeds: [{ feed: 'all', after: 0 }] })
      expect(answer).toEqual({ kind: 'stranger', why: 'voided' })
      expect(await push(phone, phone.op([phone.keyFact('scorer', 'a')], { n: 90 }))).toEqual([refused('voided', '')])
    }
  })

  it('while its question to follow is being answered, is not let in by that', async () => {
    const { store, clock, members, era } = await openOuting()
    const { desk, scorer } = members
    let voided: Promise<unknown> | null = null
    // A store that takes its time over where the feeds end, as one in another place does.
    const slow = {
      ...store,
      endsOf: async (log: LogId) => {
        voided ??= room.push(desk.shown, { ops: [desk.op([fact('void/key/birch', true)])] })
        await voided
        await clock.pass()
        return store.endsOf(log)
      },
    }
    const room = createRoom({ store: slow, clock })
    const link = makeLink(scorer)
    const answer = await room.follow(link, { era: await era(), feeds: [{ feed: 'all', after: 0 }] })
    expect(answer).toEqual({ kind: 'stranger', why: 'voided' })
    await room.push(desk.shown, { ops: [desk.op([score('a', 3)])] })
    await clock.pass(2_000)
    expect(link.tells).toEqual([])
  })
})

describe('an invite that is voided', () => {
  it('cuts the guests that read by it, and nobody who came by it', async () => {
    const { push, follow, members, clock } = await openOuting()
    const { desk, scorer } = members
    const guest = await follow(makePhone('fir', invites.scorer), 'all')
    const other = await follow(makePhone('larch', invites.viewer), 'all')
    const member = await follow(scorer, 'all')
    await push(desk, desk.op([fact('void/invite/s', true)]))
    await clock.pass()
    expect([guest.partings, other.partings, member.partings]).toEqual([['voided'], [], []])
    expect(scorer.hello.invite?.id).toBe('s' as InviteId)
  })
})
