import { describe, expect, it } from 'vitest'
import { type Op, textOfOp } from '#core/log/op.ts'
import { roles } from '#core/outing/facts.ts'
import { factKinds } from '#core/outing/keys.ts'
import { favouriteChosen } from '#core/plan/acts.ts'
import { playerFactKinds } from '#core/plan/keys.ts'
import type { DeviceId, GroupId, LogId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import { parseOp } from '#shared/op.ts'
import { schemaInPlayerLog } from '#shared/player-facts.ts'
import { forbiddenFact, rolesTable } from '#shared/roles.ts'
import { makePlan } from '../kit/player-plan.ts'

const opOf = (key: string, value: Json): Op => ({
  log: 'own' as LogId,
  scope: null,
  device: 'phone' as DeviceId,
  n: 1,
  tick: 1,
  at: 0,
  act: 'favourite number changed',
  facts: [{ key, value, replaces: [] }],
})

const [chosen] = favouriteChosen(makePlan(), 100)
const op = opOf(chosen?.key ?? '', chosen?.value ?? null)

describe("an op of a player's log", () => {
  it('is sound in that log, and unknown in the log of an outing', () => {
    expect(parseOp(textOfOp(op), schemaInPlayerLog)).toEqual({ ok: true, value: op })
    expect(parseOp(textOfOp(op))).toEqual({ ok: false, error: { code: 'newer', path: 'facts[0].key' } })
  })

  it('holds nothing of an outing', () => {
    expect(parseOp(textOfOp(opOf('title', 'Quillmoor')), schemaInPlayerLog)).toMatchObject({ error: { code: 'newer' } })
  })

  it.each<readonly [string, Json]>([
    ['favourite', { amount: 0, unit: 'yards' }],
    ['favourite', { amount: 99.5, unit: 'yards' }],
    ['favourite', 100],
    ['club/iron-7', { carry: { amount: 501, unit: 'yards' } }],
    ['club/iron-7', { carry: 150 }],
    ['habit/middle', 'on'],
    ['unit', 'feet'],
    ['handicap-index', 541],
    ['handicap-index', -101],
    ['handicap-index', '18.4'],
    ['ratings', 'juniors'],
  ])('is refused where %s is %j', (key, value) => {
    expect(parseOp(textOfOp(opOf(key, value)), schemaInPlayerLog)).toMatchObject({ error: { code: 'wrong value' } })
  })
})

describe('who may write it', () => {
  it.each(roles)('%s', role => {
    const group = role === 'scorer' ? ('g1' as GroupId) : null
    const actor = { role, group, device: op.device }
    expect(forbiddenFact(actor, op)).toBe(role === 'owner' ? null : 0)
  })

  it('is the owner alone, of every kind, and no owner writes anything of play', () => {
    for (const kind of playerFactKinds) {
      expect(rolesTable[kind]).toEqual({ desk: 'no', scorer: 'no', viewer: 'no', owner: 'any' })
    }
    const ofOwner = factKinds.filter(kind => rolesTable[kind].owner !== 'no')
    expect(ofOwner).toEqual(['invite', 'key', 'voidKey', 'voidInvite'])
  })
})
