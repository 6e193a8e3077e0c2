import { describe, expect, it } from 'vitest'
import { opId } from '#core/log/op.ts'
import type { LogId } from '#core/values/ids.ts'
import { openContent } from '#tests/server/hostile/content.ts'
import { fact, inviteFact, makePhone, type Phone, score } from '#tests/server/support/phone.ts'
import { later, refused } from '#tests/server/support/verdicts.ts'
import { invites, openOuting, otherKey, storedKind } from './outing.ts'

const already = (seq: number) => ({ kind: 'already stored', seq })

/** The phone as it says itself to another log. */
const inLog = (phone: Phone, log: string): Phone => ({
  ...phone,
  shown: { ...phone.shown, log: log as LogId },
})

/** An outing in which a scorer has written one score, and the desk has named the day. */
async function openScored() {
  const outing = await openOuting()
  const { push, members } = outing
  const scored = members.scorer.op([score('a', 4)])
  const titled = members.desk.op([fact('title', 'Quillmoor')])
  expect(await push(members.scorer, scored)).toEqual([storedKind])
  expect(await push(members.desk, titled)).toEqual([storedKind])
  return { ...outing, scored, titled }
}

describe('an op that comes again', () => {
  it('is answered by its first sequence, whoever of the outing brings it', async () => {
    const { push, members, cedar, content, scored, titled } = await openScored()
    const before = content()
    for (const phone of [...Object.values(members), cedar]) {
      for (let time = 0; time < 3; time++) {
        expect(await push(phone, scored, titled)).toEqual([already(2), already(3)])
      }
    }
    expect(content()).toBe(before)
  })

  it('tells nobody outside anything', async () => {
    const { push, content, scored } = await openScored()
    const before = content()
    expect(await push(makePhone('fir'), scored)).toEqual([later('key unknown')])
    expect(await push(otherKey('birch'), scored)).toEqual([later('key unknown')])
    expect(content()).toBe(before)
  })

  it('into another log is refused for its name, even by a phone that is the desk there', async () => {
    const { room, store, scored, titled, folder } = await openScored()
    const there = makePhone('alder', null, 'another-log')
    const push = async (phone: Phone, ...ops: string[]) => (await room.push(phone.shown, { ops })).verdicts
    expect(await push(there, there.op([there.keyFact('desk')]))).toEqual([storedKind])
    const content = await openContent(folder)
    const before = content()
    expect(await push(there, scored, titled)).toEqual([refused('other log', 'log'), refused('other log', 'log')])
    expect(await store.headOf(there.hello.log)).toMatchObject({ seq: 1 })
    expect(content()).toBe(before)
  })

  it('into a log that nobody holds makes none', async () => {
    const { room, store, scored, members } = await openScored()
    const elsewhere = inLog(members.scorer, 'nowhere')
    expect((await room.push(elsewhere.shown, { ops: [scored] })).verdicts).toEqual([refused('other log', 'log')])
    expect(await store.headOf('nowhere' as LogId)).toBeNull()
  })

  it('after its phone was taken out is still stored: only what is new is refused', async () => {
    const { push, members, content, scored } = await openScored()
    const { desk, scorer } = members
    expect(await push(desk, desk.op([fact('void/key/birch', true)]))).toEqual([storedKind])
    const before = content()
    const verdicts = await push(scorer, scored, scorer.op([score('a', 5)]), scorer.op([score('a', 6)], { n: 1 }))
    expect(verdicts).toEqual([already(2), refused('voided', ''), refused('voided', '')])
    expect(content()).toBe(before)
  })

  it('of a phone that was taken out is brought by another of its group', async () => {
    const { push, members, maple } = await openScored()
    const { desk, scorer } = members
    await push(desk, desk.op([fact('void/key/birch', true)]))
    const unsent = scorer.op([score('a', 5, 2)])
    expect(await push(scorer, unsent)).toEqual([refused('voided', '')])
    expect(await push(maple, unsent)).toEqual([storedKind])
    expect(await push(scorer, unsent)).toEqual([already(5)])
  })

  it('after the log was deleted brings nothing back', async () => {
    const { push, room, store, members, scored, titled, content } = await openScored()
    const { desk, scorer } = members
    await room.delete(desk.shown)
    const before = content()
    const start = desk.op([desk.keyFact('desk'), inviteFact(invites.desk)])
    const gone = refused('deleted', 'log')
    expect(await push(desk, start, titled)).toEqual([gone, gone])
    expect(await push(scorer, scored)).toEqual([gone])
    expect(await store.headOf(desk.hello.log)).toBe('deleted')
    expect(content()).toBe(before)
  })
})

describe('an op in another phone’s name', () => {
  it('that this one has used is refused, by whomever, and the first stays', async () => {
    const { push, members, maple, content } = await openScored()
    const before = content()
    const forged = members.scorer.op([score('a', 9)], { n: 1 })
    for (const phone of [members.desk, members.scorer, maple, members.viewer, members.owner]) {
      expect(await push(phone, forged)).toEqual([refused('identity taken', 'n')])
    }
    expect(content()).toBe(before)
  })

  it('is marked with who brought it, and with nobody who wrote it', async () => {
    const { push, members, maple, store } = await openScored()
    const forged = members.scorer.op([score('a', 9)], { n: 40 })
    expect(await push(maple, forged)).toEqual([storedKind])
    const read = { feed: 'all', after: 1, upTo: 9, limit: 9, textLength: 1e6 }
    const rows = await store.read(members.desk.hello.log, read)
    expect(rows.map(([seq, , , carrier]) => [seq, carrier])).toEqual([
      [2, null],
      [3, null],
      [4, 'maple'],
    ])
    // The phone of that name then learns that this number is spent.
    expect(await push(members.scorer, members.scorer.op([score('a', 4)], { n: 40 }))).toEqual([
      refused('identity taken', 'n'),
    ])
  })

  it('of the desk’s gives no more than its carrier has', async () => {
    const { push, members, content } = await openScored()
    const [before, beside] = [content(), content('offered')]
    const { desk, scorer, viewer } = members
    const raised = desk.op([fact('key/birch', scorer.keyFact('desk').value, [opId('alder', 1)])], { n: 40 })
    for (const phone of [scorer, viewer]) expect(await push(phone, raised)).toEqual([later('desk')])
    expect(content('offered')).toBe(beside)
    expect(content()).not.toBe(before)
    expect(await push(scorer, scorer.op([fact('title', 'Mine')]))).toEqual([refused('forbidden', 'facts[0].key')])
  })
})

describe('a void', () => {
  it('that is taken back lets the phone go on from where it was', async () => {
    const { push, members, yew, room } = await openScored()
    const { desk, scorer } = members
    const back = (phone: Phone) => phone.op([fact('void/key/yew', null, [opId('alder', 1)])])
    expect(await push(scorer, back(scorer))).toEqual([refused('forbidden', 'facts[0].key')])
    expect(await push(yew, back(yew))).toEqual([refused('voided', '')])
    expect(await push(desk, back(desk))).toEqual([storedKind])
    expect(await push(yew, yew.op([score('a', 4, 3)]))).toEqual([storedKind])
    expect(await room.pull(yew.shown, { feed: 'all', after: 0 })).toMatchObject({ kind: 'pulled' })
  })

  it('of an invite holds for a guest whose first op was on its way', async () => {
    const { push, members, content } = await openScored()
    const { desk } = members
    const fir = makePhone('fir', invites.scorer)
    const voiding = desk.op([fact('void/invite/s', true)])
    const joining = fir.op([fir.keyFact('scorer', 'a')])
    const [, joined] = await Promise.all([push(desk, voiding), push(fir, joining)])
    expect(joined).toEqual([refused('voided', '')])
    const before = content()
    expect(await push(fir, joining)).toEqual([refused('voided', '')])
    expect(content()).toBe(before)
  })
})
