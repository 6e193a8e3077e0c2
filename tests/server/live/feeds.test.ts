import { describe, expect, it } from 'vitest'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import { stateOfSnapshot } from '#core/log/snapshot.ts'
import type { GroupId } from '#core/values/ids.ts'
import { snapshotAnswerSchema } from '#shared/messages/snapshot.ts'
import { fact, inviteFact, makeInvite, makePhone, score } from '#tests/server/support/phone.ts'
import { makeLink, openRoom } from '#tests/server/support/room.ts'

const inGroup = (group: string) => ({ scope: group as GroupId })
const deskInvite = makeInvite('d', 'desk')

async function openRound() {
  const alder = makePhone('alder')
  const setup = await openRoom(alder.hello.log)
  await setup.push(alder, alder.op([alder.keyFact('desk'), inviteFact(deskInvite)]))
  const enter = (group: string, strokes: number) => setup.push(alder, alder.op([score(group, strokes)], inGroup(group)))
  return { ...setup, alder, enter }
}

const spans = (tells: readonly { feed: string; before: number; upTo: number; ops: readonly unknown[] }[]) =>
  tells.map(({ feed, before, upTo, ops }) => [feed, before, upTo, ops.length])

describe('following', () => {
  it('answers what a feed holds after the sequence that the phone names', async () => {
    const { room, alder, enter, era } = await openRound()
    await enter('a', 4)
    await enter('b', 5)
    const feeds = [
      { feed: 'g/a', after: 0 },
      { feed: 'all', after: 1 },
    ]
    const answer = await room.follow(makeLink(alder), { era: await era(), feeds })
    expect(answer).toMatchObject({ kind: 'followed', sameEra: true, role: 'desk', group: null })
    const parts = answer.kind === 'followed' ? answer.parts : []
    expect(parts.map(({ feed, upTo, more, ops }) => [feed, upTo, more, ops.map(([seq]) => seq)])).toEqual([
      ['g/a', 2, false, [1, 2]],
      ['all', 3, false, [2, 3]],
    ])
  })

  it('gives nothing in another era, nor to a phone that is ahead of the store', async () => {
    const { room, alder, era } = await openRound()
    const other = await room.follow(makeLink(alder), {
      era: 'anotherera',
      feeds: [{ feed: 'all', after: 0 }],
    })
    expect(other).toMatchObject({ kind: 'followed', sameEra: false, parts: [] })
    const ahead = await room.follow(makeLink(alder), { era: await era(), feeds: [{ feed: 'all', after: 99 }] })
    expect(ahead).toMatchObject({ kind: 'followed', sameEra: false, parts: [] })
  })

  it('is open to a guest by its invite, and closed to a stranger', async () => {
    const { room } = await openRound()
    const feeds = [{ feed: 'all', after: 0 }]
    const guest = await room.follow(makeLink(makePhone('birch', deskInvite)), { era: null, feeds })
    expect(guest).toMatchObject({ kind: 'followed', role: 'desk' })
    expect(await room.follow(makeLink(makePhone('rowan')), { era: null, feeds })).toEqual({
      kind: 'stranger',
      why: 'key unknown',
    })
    const elsewhere = makePhone('alder', null, 'other-log')
    expect(await room.follow(makeLink(elsewhere), { era: null, feeds })).toEqual({
      kind: 'stranger',
      why: 'log unknown',
    })
  })

  it('tells a phone of too old a protocol so', async () => {
    const { room, alder } = await openRound()
    const shown = { ...alder.shown, isTooOld: true }
    expect(await room.pull(shown, { feed: 'all', after: 0 })).toEqual({ kind: 'stranger', why: 'protocol too old' })
  })

  it('closes the older link of the same phone, and nobody else’s', async () => {
    const { follow, alder, enter, clock, push } = await openRound()
    const birch = makePhone('birch', deskInvite)
    await push(birch, birch.op([birch.keyFact('desk')]))
    const other = await follow(birch, 'g/a')
    const older = await follow(alder, 'g/a')
    const newer = await follow(alder, 'g/a')
    await enter('a', 4)
    await clock.pass()
    expect([older.partings, newer.partings, other.partings]).toEqual([['another link'], [], []])
    expect([older.tells.length, newer.tells.length, other.tells.length]).toEqual([0, 1, 1])
  })

  it('cannot be cut by a phone that only says the other’s name', async () => {
    const { follow, alder } = await openRound()
    const link = await follow(alder, 'all')
    const impostor = { ...makePhone('alder', deskInvite) }
    const shown = { ...impostor.shown, keyHash: 'f'.repeat(64) }
    await follow({ ...impostor, shown }, 'all')
    expect(link.partings).toEqual([])
  })
})

describe('telling', () => {
  it('gives a group’s feed its ops and those of no scope at once, each joining on the last', async () => {
    const { follow, alder, enter, push, clock } = await openRound()
    const link = await follow(alder, 'g/a')
    await enter('a', 4)
    await clock.pass()
    await enter('b', 5)
    await clock.pass()
    await push(alder, alder.op([fact('title', 'Quillmoor')]))
    await clock.pass()
    expect(spans(link.tells)).toEqual([
      ['g/a', 1, 2, 1],
      ['g/a', 2, 4, 1],
    ])
  })

  it('tells one group nothing of another’s', async () => {
    const { follow, alder, enter, clock } = await openRound()
    const link = await follow(alder, 'g/b')
    await enter('a', 4)
    await clock.pass(2_000)
    expect(link.tells).toEqual([])
  })

  it('gives the feed of all in batches, at most twice a second, with no gap between', async () => {
    const { follow, alder, enter, clock } = await openRound()
    const link = await follow(alder, 'all')
    for (let tenth = 0; tenth < 20; tenth++) {
      await enter(tenth % 2 ? 'a' : 'b', 3)
      await clock.pass(100)
    }
    await clock.pass(500)
    const told = spans(link.tells)
    expect(told.length).toBeGreaterThanOrEqual(4)
    expect(told.length).toBeLessThanOrEqual(5)
    expect(told.map(([, before]) => before)).toEqual([1, ...told.slice(0, -1).map(([, , upTo]) => upTo)])
    expect(link.tells.flatMap(({ ops }) => ops.map(([seq]) => seq))).toEqual(
      Array.from({ length: 20 }, (_, i) => i + 2),
    )
  })

  it('gives them on when the clock of the server is put back', async () => {
    const { follow, alder, enter, clock } = await openRound()
    const link = await follow(alder, 'all')
    await enter('a', 3)
    await clock.pass(500)
    clock.putBack(3_600_000)
    await enter('a', 4)
    await clock.pass(500)
    expect(spans(link.tells)).toEqual([
      ['all', 1, 2, 1],
      ['all', 2, 3, 1],
    ])
  })

  it('joins a phone that comes between two batches so that the next one fits', async () => {
    const { follow, room, alder, enter, clock, era, push } = await openRound()
    await follow(alder, 'all')
    await enter('a', 3)
    await clock.pass(1)
    await enter('a', 4)
    await clock.pass(1)
    const birch = makePhone('birch', deskInvite)
    const link = makeLink(birch)
    const answer = await room.follow(link, { era: await era(), feeds: [{ feed: 'all', after: 0 }] })
    await clock.pass(600)
    const upTo = answer.kind === 'followed' ? answer.parts[0]?.upTo : null
    expect(link.tells[0]?.before).toBe(upTo)
    await push(birch, birch.op([birch.keyFact('desk')]))
    await clock.pass(600)
    expect(link.tells[1]?.before).toBe(link.tells[0]?.upTo)
  })

  it('holds back what comes while a phone’s answer is being made, and loses none of it', async () => {
    const { room, alder, enter, clock, era } = await openRound()
    const link = makeLink(alder)
    const following = room.follow(link, { era: await era(), feeds: [{ feed: 'g/a', after: 0 }] })
    const entering = Promise.all([enter('a', 3), enter('a', 4)])
    const answer = await following
    expect(link.tells).toEqual([])
    await entering
    await clock.pass()
    const answered = answer.kind === 'followed' ? (answer.parts[0]?.ops ?? []) : []
    const heard = [...answered, ...link.tells.flatMap(({ ops }) => ops)].map(([seq]) => seq)
    expect([...new Set(heard)]).toEqual([1, 2, 3])
  })
})

describe('pulling', () => {
  it('goes on in parts until nothing more is there', async () => {
    const { room, alder, push } = await openRound()
    const long = 'x'.repeat(80)
    for (let batch = 0; batch < 12; batch++) {
      const texts = Array.from({ length: 200 }, () => alder.op([fact('title', long)]))
      await push(alder, ...texts)
    }
    const seqs: number[] = []
    let after = 0
    for (let asked = 0; asked < 10; asked++) {
      const answer = await room.pull(alder.shown, { feed: 'all', after })
      if (answer.kind !== 'pulled') throw new Error(answer.why)
      seqs.push(...answer.part.ops.map(([seq]) => seq))
      after = answer.part.upTo
      if (!answer.part.more) break
    }
    expect(seqs).toEqual(Array.from({ length: 2_401 }, (_, i) => i + 1))
  })

  it('after the end gives nothing and stays there', async () => {
    const { room, alder } = await openRound()
    const part = { feed: 'g/a', upTo: 1, ops: [], more: false }
    expect(await room.pull(alder.shown, { feed: 'g/a', after: 1 })).toEqual({ kind: 'pulled', part })
  })
})

describe('exchanging', () => {
  it('gives what the phone lacks and says what the server holds, within the feed', async () => {
    const { room, alder, enter } = await openRound()
    await enter('a', 4)
    await enter('b', 5)
    await enter('a', 5)
    const answer = await room.exchange(alder.shown, {
      feed: 'g/a',
      here: [
        [
          'alder' as typeof alder.device,
          [
            [1, 1],
            [4, 9],
          ],
        ],
      ],
    })
    expect(answer).toMatchObject({
      kind: 'exchanged',
      part: { feed: 'g/a', upTo: 4, more: false },
      here: [
        [
          'alder',
          [
            [1, 2],
            [4, 4],
          ],
        ],
      ],
    })
    expect(answer.kind === 'exchanged' && answer.part.ops.map(([seq]) => seq)).toEqual([2])
  })

  it('fills a store that has lost the log from a phone that has it', async () => {
    const { room, alder } = await openRound()
    const lost = await openRoom(alder.hello.log)
    const held = await room.pull(alder.shown, { feed: 'all', after: 0 })
    const texts = held.kind === 'pulled' ? held.part.ops.map(([, text]) => text) : []
    expect(await lost.push(alder, ...texts)).toEqual([{ kind: 'stored', seq: 1 }])
    const answer = await lost.room.exchange(alder.shown, {
      feed: 'all',
      here: [['alder' as typeof alder.device, [[1, 1]]]],
    })
    expect(answer).toMatchObject({ kind: 'exchanged', part: { ops: [] }, here: [['alder', [[1, 1]]]] })
  })
})

describe('the snapshot', () => {
  it('is the fold of the log up to its sequence, and carried on with each op', async () => {
    const { room, alder, enter, push } = await openRound()
    await enter('a', 4)
    const first = await room.snapshot(alder.shown)
    expect(await room.snapshot(alder.shown)).toBe(first)
    await push(alder, alder.op([score('a', 5, 1, 'alder', ['alder.2'])], inGroup('a')))
    const second = await room.snapshot(alder.shown)
    const pulled = await room.pull(alder.shown, { feed: 'all', after: 0 })
    const ops = pulled.kind === 'pulled' ? pulled.part.ops.map(([, text]) => JSON.parse(text)) : []
    if (second.kind !== 'snapshot') throw new Error(second.why)
    expect(second.upTo).toBe(3)
    expect(stateOfSnapshot(second.snapshot as never)).toEqual(foldOps(emptyLog, ops))
    expect(snapshotAnswerSchema.safeParse(JSON.parse(JSON.stringify(second))).success).toBe(true)
  })

  it('is for those who may read', async () => {
    const { room } = await openRound()
    expect(await room.snapshot(makePhone('rowan').shown)).toEqual({ kind: 'stranger', why: 'key unknown' })
  })
})
