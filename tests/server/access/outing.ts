import { expect } from 'vitest'
import type { Fact } from '#core/log/op.ts'
import type { Role } from '#core/outing/facts.ts'
import { hashOf } from '#server/access/shown.ts'
import { openContent } from '#tests/server/hostile/content.ts'
import { fact, type Invite, inviteFact, makeInvite, makePhone, type Phone } from '#tests/server/support/phone.ts'
import { openRoom, type RoomSetup } from '#tests/server/support/room.ts'
import { later, refused } from '#tests/server/support/verdicts.ts'

export const invites = {
  desk: makeInvite('d', 'desk'),
  scorer: makeInvite('s', 'scorer', 'a'),
  scorerOfB: makeInvite('sb', 'scorer', 'b'),
  viewer: makeInvite('v', 'viewer'),
  owner: makeInvite('o', 'owner'),
  other: makeInvite('other', 'scorer', 'a'),
  ended: makeInvite('ended', 'desk'),
} as const

export const storedKind = expect.objectContaining({ kind: 'stored' })

export interface Outing extends RoomSetup {
  readonly members: Readonly<Record<Role, Phone>>
  /** Of group b, and one more of group a. */
  readonly cedar: Phone
  readonly maple: Phone
  /** Taken out: one who scored for group a, and one of the desk. */
  readonly yew: Phone
  readonly elm: Phone
  /** A hash of the store but for the tables named. */
  readonly content: (...but: readonly string[]) => string
}

/**
 * An outing of groups a and b with a phone of every role in it, two that were taken out, and an invite that was. The desk
 * says it all in its first act, which is one commit: many tests open one.
 */
export async function openOuting(log = 'quillmoor'): Promise<Outing> {
  const alder = makePhone('alder', null, log)
  const setup = await openRoom(alder.hello.log)
  const keys: Fact[] = []
  const join = (name: string, invite: Invite): Phone => {
    const phone = makePhone(name, invite, log)
    keys.push(phone.keyFact(invite.role, invite.group))
    return phone
  }
  const birch = join('birch', invites.scorer)
  const cedar = join('cedar', invites.scorerOfB)
  const maple = join('maple', invites.scorer)
  const rowan = join('rowan', invites.viewer)
  const oak = join('oak', invites.owner)
  const yew = join('yew', invites.scorer)
  const elm = join('elm', invites.desk)
  const voids = ['void/key/yew', 'void/key/elm', 'void/invite/ended'].map(key => fact(key, true))
  const start = alder.op([alder.keyFact('desk'), ...Object.values(invites).map(inviteFact), ...keys, ...voids])
  expect(await setup.push(alder, start)).toEqual([storedKind])
  const members = { desk: alder, scorer: birch, viewer: rowan, owner: oak }
  return { ...setup, members, cedar, maple, yew, elm, content: await openContent(setup.folder) }
}

/** Phones that are in nowhere, each with what the server says to whatever they write. */
export const outsiders: readonly (readonly [who: string, make: (outing: Outing) => Phone, verdict: unknown])[] = [
  ['a guest by the desk’s invite', () => makePhone('fir', invites.desk), later('key unknown')],
  ['a guest by a scorer’s invite', () => makePhone('fir', invites.scorer), later('key unknown')],
  ['a guest by the viewers’ invite', () => makePhone('fir', invites.viewer), later('key unknown')],
  ['a guest by an owner’s invite', () => makePhone('fir', invites.owner), later('key unknown')],
  ['a guest by an invite that was voided', () => makePhone('fir', invites.ended), refused('voided', '')],
  ['a stranger', () => makePhone('fir'), later('key unknown')],
  ['a stranger with an invite of nobody', () => makePhone('fir', makeInvite('nobodys', 'desk')), later('key unknown')],
  [
    'a stranger with a guessed secret of an invite',
    () => makePhone('fir', { ...invites.desk, secret: 'guessed-'.repeat(4) }),
    later('key unknown'),
  ],
  ['a stranger who says the name of the desk’s phone', () => otherKey('alder'), later('key unknown')],
  ['a stranger who says the name of a scorer’s phone', () => otherKey('birch'), later('key unknown')],
  ['a stranger who says the name of a phone that was taken out', () => otherKey('yew'), later('key unknown')],
  ['a scorer that was taken out', ({ yew }) => yew, refused('voided', '')],
  ['a desk that was taken out', ({ elm }) => elm, refused('voided', '')],
]

/** A phone of that name with another key. */
export function otherKey(name: string, invite: Invite | null = null): Phone {
  const phone = makePhone(name, invite)
  const keyHash = hashOf(`another key of ${name}`.padEnd(24, '-'))
  // Behind what is stored under that name already.
  let n = 1_000
  return {
    ...phone,
    shown: { ...phone.shown, keyHash },
    op: (facts, changes) => phone.op(facts, { n: ++n, ...changes }),
  }
}
