import type { Role } from '#core/outing/facts.ts'

/**
 * Who may write what, said a second time and plainly, from the rules and not from the roles table:
 *
 * - A key says who writes it: under `g/<group>/` that group's phones and the desk, anything else the desk alone.
 * - A scorer scores one group, a viewer only reads, an owner has the log of one player, which no outing is.
 * - A phone makes its own key, with the rights of its invite. A scorer lets in scorers of its own group, and viewers.
 * - Invites, keys and voids are otherwise the desk's, and the owner's.
 *
 * `G` stands for a group.
 */
export const deskKeys = `
title
day
length
rules
course
hole/1
tee/white
green/1
shape/1/001
player/birch
handicap/birch
player-tee/birch
ball/birch
place/birch
group/G
score/birch/1/1/desk
main
game/match/format
game/match/sides
game/match/holes
game/match/allowance
game/match/rounding
game/match/course-handicap
game/match/nine-hole-index
game/match/match-strokes
game/match/side-strokes
game/match/handicap-shares
game/match/mixed-tees
game/match/counting-balls
game/match/short-team
game/match/drawn-card
game/match/maximum-score
game/match/skins
game/match/skins-left
game/match/presses
game/match/ties
hole-out/1/1
ruling/first
playing-conditions
close/ball/birch
close/group/G
`
  .trim()
  .split('\n')

export const groupKeys = `
g/G/order
g/G/score/birch/1/1/card
g/G/score/birch/1/1/marker
g/G/game/match/format
g/G/game/match/sides
g/G/game/match/holes
g/G/game/match/allowance
g/G/game/match/rounding
g/G/game/match/course-handicap
g/G/game/match/nine-hole-index
g/G/game/match/match-strokes
g/G/game/match/side-strokes
g/G/game/match/handicap-shares
g/G/game/match/mixed-tees
g/G/game/match/counting-balls
g/G/game/match/short-team
g/G/game/match/drawn-card
g/G/game/match/maximum-score
g/G/game/match/skins
g/G/game/match/skins-left
g/G/game/match/presses
g/G/game/match/ties
g/G/conceded-stroke/match/birch/1/1
g/G/conceded-hole/match/birch/1/1
g/G/conceded-match/match/birch
g/G/agreed-hole/match/1/1
g/G/agreed-result/match
g/G/press/match/3/1
g/G/drive/birch/1/1
g/G/tee-shot/birch/1/1
g/G/likely-score/birch/1/1
g/G/absence/birch
g/G/marker/birch
g/G/certified-by-player/birch
g/G/certified-by-marker/birch
`
  .trim()
  .split('\n')

/** Of a player's own log, with a value of each: its owner's alone. */
export const playerFacts = [
  ['unit', 'yards'],
  ['club/driver', { carry: null }],
  ['favourite', { amount: 100, unit: 'yards' }],
  ['habit/middle', false],
  ['habit-number/past-front-pin', { amount: 5, unit: 'yards' }],
  ['measured/driver/1', { amount: 212, unit: 'yards' }],
  ['spread/driver', { spread: { amount: 12, unit: 'yards' }, shots: 20 }],
  ['part-swing/sand-wedge/half', { amount: 45, unit: 'yards' }],
  ['strike', 'good-strike'],
  ['handicap-index', 184],
  ['ratings', 'women'],
  ['rules-round/saturday', true],
] as const

/** Whether a phone of this role and group may write the key of a group, or of the desk where that is null. */
export function mayWritePlainly(role: Role, ownGroup: string | null, keyOfGroup: string | null): boolean {
  if (role === 'desk') return true
  return role === 'scorer' && keyOfGroup !== null && keyOfGroup === ownGroup
}

const desk = { role: 'desk', group: null }
const scorer = { role: 'scorer', group: 'a' }
const scorerOfB = { role: 'scorer', group: 'b' }
const viewer = { role: 'viewer', group: null }
const owner = { role: 'owner', group: null }

export interface AccessCell {
  readonly act: string
  readonly key: string
  /** The grant that it gives, `true` for a void, null for a withdrawal. */
  readonly value: { readonly role: string; readonly group: string | null } | true | null
  /** `ME` in a key is the phone that writes; who else may, by the words above. */
  readonly may: Readonly<Record<'desk' | 'scorer' | 'viewer' | 'owner', boolean>>
}

const cell = (act: string, key: string, value: AccessCell['value'], may: readonly Role[]): AccessCell => ({
  act,
  key,
  value,
  may: {
    desk: may.includes('desk'),
    scorer: may.includes('scorer'),
    viewer: may.includes('viewer'),
    owner: may.includes('owner'),
  },
})

const head: readonly Role[] = ['desk', 'owner']

/** Keys, invites and voids: what is written says as much as where. The scorer is one of group a. */
export const accessCells: readonly AccessCell[] = [
  cell('an invite for a desk', 'invite/new', desk, head),
  cell('an invite for a scorer of a', 'invite/new', scorer, [...head, 'scorer']),
  cell('an invite for a scorer of b', 'invite/new', scorerOfB, head),
  cell('an invite for viewers', 'invite/new', viewer, [...head, 'scorer']),
  cell('an invite for viewers with a group’s name', 'invite/new', { role: 'viewer', group: 'b' }, head),
  cell('an invite for an owner', 'invite/new', owner, head),
  cell('an invite taken back', 'invite/other', null, head),
  cell('the key of a phone that is not here, as a desk', 'key/fir', desk, head),
  cell('the key of a phone that is not here, as a scorer of a', 'key/fir', scorer, head),
  cell('the key of a phone that is not here, as a viewer', 'key/fir', viewer, head),
  cell('another phone’s key taken back', 'key/maple', null, head),
  cell('its own key taken back', 'key/ME', null, head),
  cell('its own key, as a desk', 'key/ME', desk, head),
  cell('its own key, as a scorer of a', 'key/ME', scorer, [...head, 'scorer']),
  cell('its own key, as a scorer of b', 'key/ME', scorerOfB, head),
  cell('its own key, as a viewer', 'key/ME', viewer, [...head, 'viewer']),
  cell('its own key, as an owner', 'key/ME', owner, head),
  cell('a void of the desk’s phone', 'void/key/alder', true, head),
  cell('a void of another scorer', 'void/key/maple', true, head),
  cell('the end of a void', 'void/key/yew', null, head),
  cell('a void of an invite', 'void/invite/other', true, head),
  cell('the end of an invite’s void', 'void/invite/ended', null, head),
]
