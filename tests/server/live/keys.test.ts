import { describe, expect, it } from 'vitest'
import { hashOf, shownOf } from '#server/access/shown.ts'
import { fact, inviteFact, makeInvite, makePhone, score } from '#tests/server/support/phone.ts'
import { deskInvite, openRound, scorerInvite } from '#tests/server/support/round.ts'
import { later, refused, stored } from '#tests/server/support/verdicts.ts'

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
