import { describe, expect, test } from 'vitest'
import { lineOfOp } from '#client/parts/history-line.ts'
import { type Coming, comingFacts, startHoleOf, thrownFacts } from '#client/screens/groups/roll-up-acts.ts'
import { type Draft, emptyDraft, emptyPlayer, withIndexesFilled } from '#client/screens/start/draft.ts'
import { faultsOfDraft } from '#client/screens/start/draft-faults.ts'
import { factsOfDraft, type Throw } from '#client/screens/start/facts-of-draft.ts'
import { kindPasted, parseNames } from '#client/screens/start/names-pasted.ts'
import { ownGroupOf } from '#client/state/own-group.ts'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { DeviceId, GameId, GroupId, LogId } from '#core/values/ids.ts'
import { limits } from '#shared/limits.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { outingOfState } from '#tests/kit/two-groups.ts'

const trees = ['Alder', 'Birch', 'Cedar', 'Elm', 'Fir', 'Hazel', 'Juniper', 'Larch', 'Maple', 'Oak', 'Pine', 'Rowan']
const moreTrees = [...trees, 'Spruce', 'Willow', 'Yew', 'Ash']

const draftOf = (names: readonly string[]): Draft => ({
  ...withIndexesFilled(emptyDraft),
  courseName: 'Quillmoor',
  players: names.map((name, place) => ({
    ...emptyPlayer(`p${place + 1}`),
    name,
    kind: 'course-handicap',
    figure: String(place),
  })),
})

const backwards: Throw = balls => [...balls].reverse()
let drawn = 0
const chance = { createId: () => `new${++drawn}`, thrown: backwards }

const started = (names: readonly string[]): Op =>
  makeOp([], 'desk', factsReplacing(emptyLog, factsOfDraft(draftOf(names), '2026-05-16', backwards)))
const outingWith = (ops: readonly Op[]) => outingOfState(foldOps(emptyLog, ops))
const actAfter = (ops: readonly Op[], facts: readonly NewFact[]): Op =>
  makeOp(ops, 'desk', factsReplacing(foldOps(emptyLog, ops), facts))
const sizesOf = (ops: readonly Op[]) => [...outingWith(ops).groups.values()].map(({ balls }) => balls.length)

describe('a list of names pasted', () => {
  test('has a player a line, with the figure behind the name or none', () => {
    expect(parseNames('Fir 14\n\n  Hazel Oak,  +1.3 \r\n3. Rowan;9\nElm\nYew 12,4')).toEqual([
      { name: 'Fir', figure: '14' },
      { name: 'Hazel Oak', figure: '+1.3' },
      { name: 'Rowan', figure: '9' },
      { name: 'Elm', figure: '' },
      { name: 'Yew', figure: '12.4' },
    ])
  })

  test('is of indexes where one has a tenth', () => {
    expect(kindPasted(parseNames('Fir 14\nElm 9'))).toBe('course-handicap')
    expect(kindPasted(parseNames('Fir 14\nElm 9.0'))).toBe('index')
  })
})

describe('a roll-up from the start', () => {
  test('of up to four is one group, of more the balls are thrown, three-balls first', () => {
    expect(faultsOfDraft(draftOf(moreTrees))).toEqual([])
    expect(sizesOf([started(trees.slice(0, 4))])).toEqual([4])
    expect(sizesOf([started(trees.slice(0, 9))])).toEqual([3, 3, 3])
    expect(sizesOf([started(moreTrees.slice(0, 13))])).toEqual([3, 3, 3, 4])
    const outing = outingWith([started(trees)])
    expect([...outing.groups.values()][0]?.balls).toEqual(['p12', 'p11', 'p10', 'p9'])
  })

  test('of sixteen has one Stableford across, in one act of a bounded length', () => {
    const op = started(moreTrees)
    const game = resultsOf(outingWith([op])).games.get('stableford' as GameId)
    expect(game?.kind === 'total' && game.lines).toHaveLength(16)
    expect(JSON.stringify(op).length).toBeLessThan(limits.opLength)
  })
})

describe('people who still come', () => {
  const ops = [started(trees.slice(0, 4))]
  const outing = outingWith(ops)
  const coming = (names: readonly string[], target: Coming['target']): Coming => ({
    players: names.map(name => ({ name, kind: 'course-handicap', figure: '9', tee: '' })),
    target,
    games: ['stableford' as GameId],
    startHole: 1,
  })

  test('are thrown with everybody', () => {
    const op = actAfter(ops, comingFacts(outing, coming(['Fir', 'Yew', 'Ash', 'Oak', 'Elm'], 'thrown'), chance))
    expect(sizesOf([...ops, op])).toEqual([3, 3, 3])
    const game = resultsOf(outingWith([...ops, op])).games.get('stableford' as GameId)
    expect(game?.kind === 'total' && game.lines).toHaveLength(9)
    expect(lineOfOp(op, outing, null)).toBe('a phone added Fir, Yew, Ash, Oak, Elm')
  })

  test('make a group of their own, or go with one that stands', () => {
    const own = actAfter(ops, comingFacts(outing, coming(['Fir', 'Yew', 'Ash'], 'new'), chance))
    expect(sizesOf([...ops, own])).toEqual([4, 3])
    const joined = actAfter(ops, comingFacts(outing, coming(['Fir'], 'g1' as GroupId), chance))
    expect(sizesOf([...ops, joined])).toEqual([5])
  })

  test('a throw keeps the groups that stand under their ids, and says so in a line', () => {
    const all = [started(trees)]
    const before = outingWith(all)
    const op = actAfter(all, thrownFacts(before, [...before.balls.keys()], startHoleOf(before), chance))
    expect([...outingWith([...all, op]).groups.keys()]).toEqual([...before.groups.keys()])
    expect(lineOfOp(op, before, null)).toBe('a phone threw balls for 3 groups')
  })
})

describe('the group that a phone goes round with', () => {
  const outing = outingWith([started(trees)])
  const log = 'log' as LogId
  const me = { device: 'd' as DeviceId, role: 'desk', group: null, label: 'Alder' } as const

  test("is a scorer's own, and a desk's the one in which its player plays", () => {
    expect(ownGroupOf({ log, outing, me: { ...me, role: 'scorer', group: 'g2' as GroupId } })).toBe('g2')
    expect(ownGroupOf({ log, outing, me })).toBe('g3')
    expect(ownGroupOf({ log, outing, me: { ...me, label: 'Somebody' } })).toBeNull()
  })
})
