import { describe, expect, it } from 'vitest'
import { emptyLog, foldOps, type LogState, standingsOf } from '#core/log/fold.ts'
import { type Op, opIdOf } from '#core/log/op.ts'
import { undoOf } from '#core/log/undo.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { factKinds, parseKey } from '#core/outing/keys.ts'
import {
  clubPutIn,
  clubTakenOut,
  favouriteChosen,
  habitNumberChosen,
  habitSwitched,
  indexSaid,
  ratingsChosen,
  unitChosen,
} from '#core/plan/acts.ts'
import { clubs, partSwings, proposedClubs } from '#core/plan/clubs.ts'
import { habitNumbers, habits } from '#core/plan/habits.ts'
import { parsePlayerKey, playerFactKinds, playerKeys } from '#core/plan/keys.ts'
import { planOf } from '#core/plan/plan-of.ts'
import type { DeviceId, LogId } from '#core/values/ids.ts'
import { isKnownPlayerValue } from '#shared/player-facts.ts'

const read = (state: LogState) => planOf(state, isKnownPlayerValue)

/** A player's log on one phone: each act replaces what is seen under its keys. */
function createLog() {
  let state = emptyLog
  const ops: Op[] = []
  return {
    plan: () => read(state),
    state: () => state,
    ops,
    write: (facts: readonly NewFact[]): Op => {
      const op: Op = {
        log: 'own' as LogId,
        scope: null,
        device: 'phone' as DeviceId,
        n: ops.length + 1,
        tick: ops.length + 1,
        at: 0,
        act: 'bag changed',
        facts: factsReplacing(state, facts),
      }
      ops.push(op)
      state = foldOps(state, [op])
      return op
    },
  }
}

describe('the plan of a log', () => {
  it('has proposed numbers, every habit on and no favourite before anything is said', () => {
    const plan = read(emptyLog)
    expect(plan).toMatchObject({ unit: 'yards', favourite: null, said: new Map() })
    expect(plan.numbers).toEqual({ 'mid-iron-border': 140, 'past-front-pin': 5, 'short-of-back-pin': 5 })
    expect(Object.values(plan.habits)).toEqual(habits.map(() => true))
  })

  it('takes the proposed clubs in with the first number, in one act', () => {
    const log = createLog()
    log.write(clubPutIn(log.plan(), 'iron-7', 145))
    expect([...log.plan().said.keys()]).toEqual(clubs.filter(club => proposedClubs.includes(club)))
    expect(log.plan().said.get('iron-7')).toBe(145)
    expect(log.ops).toHaveLength(1)
    log.write(clubTakenOut(log.plan(), 'wood-3'))
    expect(log.plan().said.has('wood-3')).toBe(false)
  })

  it('takes a club out of the proposed ones before any number', () => {
    const log = createLog()
    log.write(clubTakenOut(log.plan(), 'driver'))
    expect([...log.plan().said.keys()]).toEqual(clubs.filter(club => proposedClubs.includes(club) && club !== 'driver'))
  })

  it('replaces what it saw, and an undo gives it back', () => {
    const log = createLog()
    log.write(favouriteChosen(log.plan(), 90))
    const second = log.write(favouriteChosen(log.plan(), 100))
    expect(log.plan().favourite).toBe(100)
    expect(standingsOf(log.state(), playerKeys.favourite)).toHaveLength(1)
    const { facts } = undoOf(log.state(), log.ops, second)
    log.write(facts)
    expect(log.plan().favourite).toBe(90)
    log.write(favouriteChosen(log.plan(), null))
    expect(log.plan().favourite).toBeNull()
  })

  it('has a Handicap Index in tenths and the ratings once they are said, and no Index once it is taken back', () => {
    const log = createLog()
    expect(log.plan()).toMatchObject({ indexTenths: null, ratings: null })
    log.write(indexSaid(184))
    log.write(ratingsChosen('women'))
    expect(log.plan()).toMatchObject({ indexTenths: 184, ratings: 'women' })
    log.write(indexSaid(0))
    expect(log.plan().indexTenths).toBe(0)
    log.write(indexSaid(null))
    expect(log.plan()).toMatchObject({ indexTenths: null, ratings: 'women' })
  })

  it('switches a habit and keeps its number', () => {
    const log = createLog()
    log.write(habitSwitched('middle', false))
    log.write(habitNumberChosen(log.plan(), 'mid-iron-border', 150))
    expect(log.plan().habits).toMatchObject({ middle: false, 'lay-up': true })
    expect(log.plan().numbers['mid-iron-border']).toBe(150)
  })

  it('tells what was said in yards in metres, and in yards again unchanged', () => {
    const log = createLog()
    log.write(clubPutIn(log.plan(), 'iron-7', 145))
    log.write(favouriteChosen(log.plan(), 100))
    log.write(unitChosen('metres'))
    // International yard and pound agreement, 1959: 145 yd is 132.588 m, 100 yd is 91.44 m, 140 yd is 128.016 m.
    expect(log.plan().said.get('iron-7')).toBe(133)
    expect(log.plan().favourite).toBe(91)
    expect(log.plan().numbers['mid-iron-border']).toBe(128)
    log.write(favouriteChosen(log.plan(), 95))
    log.write(unitChosen('yards'))
    expect(log.plan().said.get('iron-7')).toBe(145)
    expect(log.plan().favourite).toBe(104)
  })

  it('leaves out what it does not understand', () => {
    const log = createLog()
    log.write([{ key: playerKeys.favourite, value: { amount: 100, unit: 'paces' } }])
    log.write([{ key: playerKeys.club('iron-7'), value: { carry: { amount: -3, unit: 'yards' } } }])
    expect(log.plan()).toMatchObject({ favourite: null, said: new Map() })
  })
})

describe("a player's keys", () => {
  const made = [
    playerKeys.unit,
    playerKeys.favourite,
    playerKeys.strike,
    playerKeys.handicapIndex,
    playerKeys.ratings,
    ...clubs.map(playerKeys.club),
    ...clubs.map(playerKeys.spread),
    ...clubs.map(club => playerKeys.measured(club, 'a1')),
    ...clubs.flatMap(club => partSwings.map(part => playerKeys.partSwing(club, part))),
    ...habits.map(playerKeys.habit),
    ...habitNumbers.map(playerKeys.habitNumber),
    playerKeys.rulesRound('saturday' as LogId),
  ]

  it('are read as what they were made for, each once, and cover every kind', () => {
    expect(new Set(made).size).toBe(made.length)
    expect(new Set(made.map(key => parsePlayerKey(key)?.kind))).toEqual(new Set(playerFactKinds))
    expect(parsePlayerKey('club/iron-7')).toEqual({ kind: 'club', club: 'iron-7' })
    expect(parsePlayerKey('habit-number/mid-iron-border')).toEqual({ kind: 'habitNumber', number: 'mid-iron-border' })
  })

  it.each([
    'club/spoon',
    'club',
    'club/iron-7/x',
    'measured/spoon/1',
    'measured/iron-7',
    'part-swing/iron-7/quarter',
    'strike/x',
    'handicap-index/x',
    'ratings/x',
    'habit/prayer',
    'favourite/x',
    'unit/x',
    'title',
    '',
  ])('are none of theirs: %s', key => expect(parsePlayerKey(key)).toBeNull())

  it('are no keys of an outing, and no kind has the name of one', () => {
    expect(made.filter(key => parseKey(key) !== null)).toEqual([])
    expect(playerFactKinds.filter(kind => (factKinds as readonly string[]).includes(kind))).toEqual([])
  })

  it('name their own op', () => {
    const log = createLog()
    const op = log.write(unitChosen('metres'))
    expect(opIdOf(op)).toBe('phone.1')
  })
})
