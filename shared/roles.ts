import { type Fact, groupOfKey, type Op, withdrawn } from '#core/log/op.ts'
import type { FactKind, FactValues, KeyParts, Role } from '#core/outing/facts.ts'
import { parseKey } from '#core/outing/keys.ts'
import type { PlayerFactKind } from '#core/plan/facts.ts'
import { parsePlayerKey } from '#core/plan/keys.ts'
import type { DeviceId, GroupId } from '#core/values/ids.ts'

/**
 * What a role may write of a kind of fact:
 * `any` in every scope; `own group` under its own group's keys; `own key` the key of the phone itself, as its invite
 * grants it; `own grant` an invite that gives no more than the writer has; `no` nothing.
 */
export const rights = ['any', 'own group', 'own key', 'own grant', 'no'] as const
export type Right = (typeof rights)[number]

type Row = Readonly<Record<Role, Right>>

const deskAlone: Row = { desk: 'any', scorer: 'no', viewer: 'no', owner: 'no' }
const groupAndDesk: Row = { desk: 'any', scorer: 'own group', viewer: 'no', owner: 'no' }
const ownerAlone: Row = { desk: 'no', scorer: 'no', viewer: 'no', owner: 'any' }

/**
 * Who may write what, in an outing's log and in a player's own: the server, the tests and the documentation read this
 * table.
 */
export const rolesTable: Readonly<Record<FactKind | PlayerFactKind, Row>> = {
  title: deskAlone,
  day: deskAlone,
  length: deskAlone,
  rules: deskAlone,
  course: deskAlone,
  hole: deskAlone,
  tee: deskAlone,
  green: deskAlone,
  shape: deskAlone,
  player: deskAlone,
  handicap: deskAlone,
  playerTee: deskAlone,
  ball: deskAlone,
  place: deskAlone,
  group: deskAlone,
  order: groupAndDesk,
  score: groupAndDesk,
  main: deskAlone,
  gameFormat: groupAndDesk,
  gameSides: groupAndDesk,
  gameHoles: groupAndDesk,
  gameAllowance: groupAndDesk,
  gameRounding: groupAndDesk,
  gameCourseHandicap: groupAndDesk,
  gameNineHoleIndex: groupAndDesk,
  gameMatchStrokes: groupAndDesk,
  gameSideStrokes: groupAndDesk,
  gameHandicapShares: groupAndDesk,
  gameMixedTees: groupAndDesk,
  gameCountingBalls: groupAndDesk,
  gameShortTeam: groupAndDesk,
  gameDrawnCard: groupAndDesk,
  gameMaximumScore: groupAndDesk,
  gameSkins: groupAndDesk,
  gameSkinsLeft: groupAndDesk,
  gamePresses: groupAndDesk,
  gameTies: groupAndDesk,
  concededStroke: groupAndDesk,
  concededHole: groupAndDesk,
  concededMatch: groupAndDesk,
  agreedHole: groupAndDesk,
  agreedResult: groupAndDesk,
  press: groupAndDesk,
  holeOut: deskAlone,
  drive: groupAndDesk,
  teeShot: groupAndDesk,
  likelyScore: groupAndDesk,
  absence: groupAndDesk,
  marker: groupAndDesk,
  certifiedByPlayer: groupAndDesk,
  certifiedByMarker: groupAndDesk,
  ruling: deskAlone,
  playingConditions: deskAlone,
  closeBall: deskAlone,
  closeGroup: deskAlone,
  invite: { desk: 'any', scorer: 'own grant', viewer: 'no', owner: 'any' },
  key: { desk: 'any', scorer: 'own key', viewer: 'own key', owner: 'any' },
  voidKey: { desk: 'any', scorer: 'no', viewer: 'no', owner: 'any' },
  voidInvite: { desk: 'any', scorer: 'no', viewer: 'no', owner: 'any' },
  unit: ownerAlone,
  club: ownerAlone,
  measured: ownerAlone,
  spread: ownerAlone,
  partSwing: ownerAlone,
  strike: ownerAlone,
  handicapIndex: ownerAlone,
  ratings: ownerAlone,
  favourite: ownerAlone,
  habit: ownerAlone,
  habitNumber: ownerAlone,
  rulesRound: ownerAlone,
}

/** Whose rights an op is weighed against. */
export interface Actor {
  readonly role: Role
  /** A scorer's group; null for every other role. */
  readonly group: GroupId | null
  readonly device: DeviceId
}

/** Those whose log it is: the desk its outing's, the owner a log of its own. */
export const hasWholeLog = ({ role }: Actor): boolean => role === 'desk' || role === 'owner'

/** The index of the first fact that the actor may not write, or null when all are in its rights. */
export function forbiddenFact(actor: Actor, op: Op): number | null {
  const index = op.facts.findIndex(fact => !mayWrite(actor, fact))
  return index === -1 ? null : index
}

function mayWrite(actor: Actor, fact: Fact): boolean {
  const parts = parseKey(fact.key)
  const kind = parts?.kind ?? parsePlayerKey(fact.key)?.kind
  if (kind === undefined) return false
  const right = rolesTable[kind][actor.role]
  if (right === 'any') return true
  if (right === 'own group') return groupOfKey(fact.key) === actor.group
  if (right === 'own key') return parts !== null && isOwnKey(actor, parts, fact)
  return right === 'own grant' && isOwnGrant(actor, fact)
}

function isOwnKey(actor: Actor, { device }: KeyParts, { value }: Fact): boolean {
  if (value === withdrawn) return false
  const grant = value as unknown as FactValues['key']
  return device === actor.device && grant.role === actor.role && grant.group === actor.group
}

function isOwnGrant(actor: Actor, { value, replaces }: Fact): boolean {
  if (value === withdrawn || replaces.length > 0) return false
  const grant = value as unknown as FactValues['invite']
  if (grant.role === 'viewer') return grant.group === null
  return grant.role === actor.role && grant.group === actor.group
}
