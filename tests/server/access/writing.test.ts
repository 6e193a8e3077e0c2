import { describe, expect, it } from 'vitest'
import type { Fact } from '#core/log/op.ts'
import { roles } from '#core/outing/facts.ts'
import { keyPatterns, parseKey } from '#core/outing/keys.ts'
import { must } from '#core/values/assert.ts'
import type { GroupId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { factExamples } from '#tests/server/hostile/examples.ts'
import { fact, inviteFact, makePhone, type Phone } from '#tests/server/support/phone.ts'
import { openRoom } from '#tests/server/support/room.ts'
import { later, refused } from '#tests/server/support/verdicts.ts'
import { invites, openOuting, otherKey, outsiders, storedKind } from './outing.ts'
import { type AccessCell, accessCells, deskKeys, groupKeys, mayWritePlainly, playerFacts } from './plain-rights.ts'

/** A group's keys in its own group and in another, the desk's outside; each with a value, and taken back. */
const cells: readonly { readonly key: string; readonly group: string | null; readonly value: Json }[] = [
  ...deskKeys.map(key => ({ key: key.replace('/G', '/a'), group: null })),
  ...['a', 'b'].flatMap(group => groupKeys.map(key => ({ key: key.replace('/G/', `/${group}/`), group }))),
].flatMap(({ key, group }) => [
  { key, group, value: must(factExamples[must(parseKey(key), key).kind].values[0], key) },
  { key, group, value: null },
])

const inGroup = (group: string | null) => ({ scope: group as GroupId | null })

/** The fact of a cell of keys, invites and voids, by this phone. */
function accessFact(phone: Phone, { key, value }: AccessCell): Fact {
  const at = key.replace('ME', phone.device)
  if (value === null || value === true) return fact(at, value)
  const { role, group } = value
  if (at.startsWith('invite/'))
    return { ...inviteFact({ ...invites.other, role, group } as typeof invites.other), key: at }
  const keyed = phone.keyFact(role as 'desk', group)
  return at === `key/${phone.device}` ? keyed : makePhone('fir').keyFact(role as 'desk', group)
}

describe('the second statement', () => {
  it('says every key of an outing, and each once', () => {
    const said = [...deskKeys, ...groupKeys, ...accessCells.map(({ key }) => key.replace('ME', 'me'))]
    expect(new Set([...deskKeys, ...groupKeys]).size).toBe(deskKeys.length + groupKeys.length)
    const patternOf = (key: string) => {
      const { kind } = must(parseKey(key.replace('/G', '/a')), key)
      return keyPatterns[kind].find(pattern => pattern.startsWith('g/') === key.startsWith('g/'))
    }
    expect([...new Set(said.map(patternOf))].sort()).toEqual(Object.values(keyPatterns).flat().sort())
  })
})

describe('what each role may write', () => {
  it.each(roles)('is stored, and nothing else changes the store: a %s', async role => {
    const { push, members, content } = await openOuting()
    const phone = members[role]
    for (const { key, group, value } of cells) {
      const before = content()
      const said = [role, key, value, await push(phone, phone.op([fact(key, value)], inGroup(group)))]
      const may = mayWritePlainly(role, role === 'scorer' ? 'a' : null, group)
      expect(said).toEqual([role, key, value, [may ? storedKind : refused('forbidden', 'facts[0].key')]])
      expect(content() === before).toBe(!may)
    }
    const before = content()
    const isOwner = role === 'owner'
    for (const [key, value] of playerFacts) {
      const verdict = isOwner ? storedKind : refused('forbidden', 'facts[0].key')
      expect([key, await push(phone, phone.op([fact(key, value)]))]).toEqual([key, [verdict]])
    }
    expect(content() === before).toBe(!isOwner)
  })

  it.each(roles)('is also what it may carry for another; the rest waits for the desk: a %s', async role => {
    const { push, members, cedar, content, store } = await openOuting()
    const phone = members[role]
    for (const { key, group, value } of cells) {
      const [before, beside] = [content(), content('offered')]
      // In the name of a phone of the other group, which has not sent it itself.
      const text = cedar.op([fact(key, value)], inGroup(group))
      const may = mayWritePlainly(role, role === 'scorer' ? 'a' : null, group)
      expect([key, value, await push(phone, text)]).toEqual([key, value, [may ? storedKind : later('desk')]])
      if (may) expect(await carrierOfLast(store, phone)).toBe(phone.device)
      else expect(content('offered')).toBe(beside)
      expect(content() === before).toBe(false)
      // Such a phone has a bounded number of them waiting.
      await store.dropOffer(phone.hello.log, cedar.device, JSON.parse(text).n)
    }
  })

  it.each(outsiders)('is nothing to %s', async (_, make, verdict) => {
    const outing = await openOuting()
    const { push, content } = outing
    const phone = make(outing)
    const before = content()
    for (const { key, group, value } of cells) {
      const own = phone.op([fact(key, value)], inGroup(group))
      const carried = makePhone('larch').op([fact(key, value)], inGroup(group))
      expect([key, await push(phone, own), await push(phone, carried)]).toEqual([key, [verdict], [verdict]])
      expect(content()).toBe(before)
    }
  })
})

const carrierOfLast = async (store: Awaited<ReturnType<typeof openOuting>>['store'], { hello: { log } }: Phone) => {
  const head = await store.headOf(log)
  const seq = head === null || head === 'deleted' ? 0 : head.seq
  const rows = await store.read(log, { feed: 'all', after: seq - 1, upTo: seq, limit: 1, textLength: 1e6 })
  return rows[0]?.[3]
}

/** The outing that the last cell left as it was, else a new one. */
function openAgain() {
  let outing: Awaited<ReturnType<typeof openOuting>> | null = null
  let before = ''
  return async () => {
    if (outing === null || outing.content() !== before) outing = await openOuting()
    before = outing.content()
    return outing
  }
}

describe('keys, invites and voids', () => {
  it.each(roles)('are written by those who may, and by nobody else: a %s', async role => {
    const open = openAgain()
    for (const cell of accessCells) {
      const { push, members, content } = await open()
      const phone = members[role]
      const before = content()
      const verdicts = await push(phone, phone.op([accessFact(phone, cell)]))
      const may = cell.may[role]
      expect([cell.act, verdicts]).toEqual([cell.act, [may ? storedKind : refused('forbidden', 'facts[0].key')]])
      expect(content() === before).toBe(!may)
    }
  })

  it.each(roles)('are carried by those who may write them, and else wait for the desk: a %s', async role => {
    const open = openAgain()
    for (const cell of accessCells) {
      const { push, members, maple, content } = await open()
      const phone = members[role]
      const before = content('offered')
      const verdicts = await push(phone, maple.op([accessFact(phone, cell)]))
      const may = cell.may[role]
      expect([cell.act, verdicts]).toEqual([cell.act, [may ? storedKind : later('desk')]])
      expect(content('offered') === before).toBe(!may)
    }
  })

  it.each(outsiders)(
    'are nothing to %s, but for a guest’s own key as its invite gives it',
    async (_, make, verdict) => {
      const open = openAgain()
      for (const cell of accessCells) {
        const outing = await open()
        const { push, content } = outing
        const phone = make(outing)
        const before = content()
        const expected = outsidersVerdict(phone, cell, verdict)
        expect([cell.act, await push(phone, phone.op([accessFact(phone, cell)]))]).toEqual([cell.act, [expected]])
        expect(content() === before).toBe(expected !== storedKind)
      }
    },
  )
})

/** A guest gives its own key as its invite grants it, and no other; to everybody else the outing stays shut. */
function outsidersVerdict({ hello, device }: Phone, { key, value }: AccessCell, verdict: unknown): unknown {
  const by = Object.values(invites).find(({ id, secret }) => id === hello.invite?.id && secret === hello.invite.secret)
  const isOwnKey = key.replace('ME', device) === `key/${device}`
  if (by === undefined || by === invites.ended || device !== 'fir' || !isOwnKey) return verdict
  const isAsGiven = value !== null && value !== true && value.role === by.role && value.group === by.group
  return isAsGiven ? storedKind : refused('forbidden', 'facts[0].key')
}

describe('a key or an invite that stands', () => {
  it.each(roles)('keeps the hash of its first writer, whoever says another: a %s', async role => {
    const { push, members, content } = await openOuting()
    const phone = members[role]
    const before = content()
    const facts = [
      phone.keyFact(role, role === 'scorer' ? 'a' : null, { hash: 'f'.repeat(64) }),
      inviteFact({ ...invites[role], secret: 'another-secret-of-this-invite' }),
    ]
    for (const said of facts) {
      // What the role may not write at all is forbidden before that.
      const mayWrite = said.key.startsWith('key/') || role !== 'viewer'
      const expected = mayWrite ? refused('key taken', 'facts[0].key') : refused('forbidden', 'facts[0].key')
      expect([said.key, await push(phone, phone.op([said]))]).toEqual([said.key, [expected]])
    }
    expect(content()).toBe(before)
  })

  it('is not taken by a second phone of that name, with an invite or without', async () => {
    const { push, content } = await openOuting()
    const before = content()
    for (const name of ['alder', 'birch']) {
      const second = otherKey(name, invites.scorer)
      const join = second.op([second.keyFact('scorer', 'a', { hash: second.shown.keyHash })])
      expect(await push(second, join)).toEqual([refused('key taken', 'facts[0].key')])
      const bare = otherKey(name)
      expect(await push(bare, bare.op([bare.keyFact('scorer', 'a')]))).toEqual([later('key unknown')])
    }
    expect(content()).toBe(before)
  })

  it('is regranted by the desk, up and down, and counts from the next op on', async () => {
    const { push, members, maple } = await openOuting()
    const { desk, scorer } = members
    const title = () => fact('title', 'Quillmoor')
    expect(await push(maple, maple.op([title()]))).toEqual([refused('forbidden', 'facts[0].key')])
    expect(await push(desk, desk.op([maple.keyFact('desk')]))).toEqual([storedKind])
    expect(await push(maple, maple.op([title()]))).toEqual([storedKind])
    expect(await push(scorer, scorer.op([maple.keyFact('scorer', 'a')]))).toEqual([
      refused('forbidden', 'facts[0].key'),
    ])
    expect(await push(desk, desk.op([maple.keyFact('viewer')]))).toEqual([storedKind])
    expect(await push(maple, maple.op([fact('g/a/order', [[1, 1]])]))).toEqual([refused('forbidden', 'facts[0].key')])
  })
})

describe('one op of many facts', () => {
  it('is refused whole for one that may not be written, wherever it stands', async () => {
    const { push, members, content } = await openOuting()
    const { scorer } = members
    const before = content()
    const own = groupKeys.slice(0, 6).map(key => ({ key: key.replace('/G/', '/a/') }))
    for (let place = 0; place <= own.length; place++) {
      const facts = own.map(({ key }) => fact(key, null))
      facts.splice(place, 0, fact('g/b/order', null))
      expect(await push(scorer, scorer.op(facts))).toEqual([refused('forbidden', `facts[${place}].key`)])
    }
    expect(content()).toBe(before)
  })

  it('cannot hide another group’s key under the scope of its own', async () => {
    const { push, members, content } = await openOuting()
    const { scorer } = members
    const before = content()
    for (const key of ['g/b/order', 'title', 'g/ab/order', 'group/a']) {
      const text = scorer.op([fact(key, null)], inGroup('a'))
      expect(await push(scorer, text)).toEqual([refused('key outside the scope', 'facts[0].key')])
    }
    expect(content()).toBe(before)
  })
})

describe('a log of one player', () => {
  it('takes its owner’s keys, invites and voids, and no more of an outing than any owner may write', async () => {
    const own = makePhone('birch', null, 'own-log')
    const { push } = await openRoom(own.hello.log)
    expect(await push(own, own.op([own.keyFact('owner'), inviteFact(invites.owner)]))).toEqual([storedKind])
    const second = makePhone('rowan', invites.owner, 'own-log')
    expect(await push(second, second.op([second.keyFact('owner')]))).toEqual([storedKind])
    for (const { key, group, value } of cells) {
      const text = own.op([fact(key, value)], inGroup(group))
      expect([key, await push(own, text)]).toEqual([key, [refused('forbidden', 'facts[0].key')]])
    }
    expect(await push(own, own.op([fact('void/key/rowan', true)]))).toEqual([storedKind])
    expect(await push(second, second.op([fact('void/key/birch', true)]))).toEqual([refused('voided', '')])
  })
})
