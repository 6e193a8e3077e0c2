import { describe, expect, it } from 'vitest'
import type { GroupId } from '#core/values/ids.ts'
import { fact, makePhone, score } from '#tests/server/support/phone.ts'
import { openRound, viewerInvite } from '#tests/server/support/round.ts'
import { alreadyStored, later, refused, stored } from '#tests/server/support/verdicts.ts'

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
