import { describe, expect, test } from 'vitest'
import { emptyLog, foldOps } from '#core/log/fold.ts'
import type { Op } from '#core/log/op.ts'
import { undoOf } from '#core/log/undo.ts'
import { factsReplacing, type NewFact } from '#core/outing/acts.ts'
import {
  type Comer,
  canThrow,
  comerFacts,
  type GroupToBe,
  gamesForAll,
  groupFacts,
  joinGroupFacts,
  throwFacts,
  widenedGameFacts,
} from '#core/outing/acts-roll-up.ts'
import { groupsThrown } from '#core/outing/draw/group-sizes.ts'
import { factsOfPlain } from '#core/outing/facts-of-plain.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { twosOf } from '#core/outing/twos-of.ts'
import type { BallId, GameId, GroupId, PlayerId } from '#core/values/ids.ts'
import { makeOp } from '#tests/kit/histories.ts'
import { plainWith } from '#tests/kit/plain-outing.ts'
import { outingOfState } from '#tests/kit/two-groups.ts'

const points = 'points' as GameId

const founding = (change: Parameters<typeof plainWith>[0] = {}): Op =>
  makeOp([], 'desk', factsReplacing(emptyLog, factsOfPlain(plainWith(change))))

const outingWith = (ops: readonly Op[]) => outingOfState(foldOps(emptyLog, ops))

const actAfter = (ops: readonly Op[], facts: readonly NewFact[]): Op =>
  makeOp(ops, 'desk', factsReplacing(foldOps(emptyLog, ops), facts))

const comer = (n: number): Comer => ({
  player: `new${n}` as PlayerId,
  ball: `new${n}` as BallId,
  name: `Tree ${n}`,
  handicap: { kind: 'course-handicap', strokes: n },
  tee: null,
})

const toBe = (n: number, balls: readonly BallId[], startHole = 1): GroupToBe => ({
  group: n === 1 ? ('four' as GroupId) : (`g${n}` as GroupId),
  name: `Group ${n}`,
  balls,
  startHole,
})

describe('people who come to a running outing', () => {
  const ops = [founding()]
  const outing = outingWith(ops)
  const comers = [1, 2, 3].map(comer)
  const balls = comers.map(({ ball }) => ball)

  test('play in a group more, from its own hole, and in the games that are for all', () => {
    expect(gamesForAll(outing).map(({ id }) => id)).toEqual([points])
    const op = actAfter(ops, [
      ...comerFacts(comers),
      ...groupFacts(outing, toBe(2, balls, 10)),
      ...widenedGameFacts(outing, [points], balls),
    ])
    const after = outingWith([...ops, op])
    expect(after.newer).toEqual([])
    const group = after.groups.get('g2' as GroupId)
    expect(group?.balls).toEqual(balls)
    expect(group?.round.map(({ hole }) => hole)).toEqual([
      10, 11, 12, 13, 14, 15, 16, 17, 18, 1, 2, 3, 4, 5, 6, 7, 8, 9,
    ])
    const game = resultsOf(after).games.get(points)
    expect(game?.kind === 'total' && game.lines).toHaveLength(7)
    expect(game?.kind === 'total' && game.gaps).toEqual([])
    // The match of the four and every card of theirs are what they were.
    const cards = (of: typeof after) => [...of.cards].filter(([ball]) => !balls.includes(ball))
    expect(cards(after)).toEqual(cards(outing))
    expect(resultsOf(after).games.get('match' as GameId)).toEqual(resultsOf(outing).games.get('match' as GameId))
  })

  test('come behind those who are in a group, and twice into a game makes once', () => {
    const op = actAfter(ops, [
      ...comerFacts(comers.slice(0, 1)),
      ...joinGroupFacts(outing, 'four' as GroupId, balls.slice(0, 1)),
    ])
    const after = outingWith([...ops, op])
    expect(after.groups.get('four' as GroupId)?.balls).toEqual(['alder', 'birch', 'cedar', 'rowan', 'new1'])
    expect(widenedGameFacts(after, [points], ['alder' as BallId])).toEqual([])
    expect(widenedGameFacts(after, ['match' as GameId], balls)).toEqual([])
  })

  test('are one act, which can be undone', () => {
    const op = actAfter(ops, [
      ...comerFacts(comers),
      ...groupFacts(outing, toBe(2, balls)),
      ...widenedGameFacts(outing, [points], balls),
    ])
    const history = [...ops, op]
    const { facts, left } = undoOf(foldOps(emptyLog, history), history, op)
    expect(left).toEqual([])
    const back = outingWith([...history, makeOp(history, 'desk', [...facts])])
    expect([...back.groups.keys()]).toEqual(['four'])
    expect(resultsOf(back).games).toEqual(resultsOf(outing).games)
  })
})

describe('balls thrown for groups', () => {
  const blank = founding({ scores: [] })
  const outing = outingWith([blank])
  const comers = [1, 2, 3, 4, 5].map(comer)
  const all = [...outing.balls.keys(), ...comers.map(({ ball }) => ball)]

  function thrown(order: readonly BallId[], ops: readonly Op[]) {
    const groups = groupsThrown(order).map((balls, place) => toBe(place + 1, balls))
    return actAfter(ops, throwFacts(outingWith(ops), groups))
  }

  test('put everybody into one group, three-balls first', () => {
    const added = actAfter([blank], comerFacts(comers))
    const op = thrown(all.toReversed(), [blank, added])
    const after = outingWith([blank, added, op])
    expect([...after.groups.values()].map(({ balls }) => balls.length)).toEqual([3, 3, 3])
    expect([...after.groups.values()].flatMap(({ balls }) => balls)).toEqual(all.toReversed())
  })

  test('can be thrown again for fewer, and the empty group goes', () => {
    const added = actAfter([blank], comerFacts(comers))
    const first = thrown(all, [blank, added])
    const second = thrown(all.slice(0, 8), [blank, added, first])
    const after = outingWith([blank, added, first, second])
    expect([...after.groups.values()].map(({ balls }) => balls.length)).toEqual([4, 4])
  })

  test('no more once a score is written', () => {
    expect(canThrow(outing)).toBe(true)
    expect(canThrow(outingWith([founding()]))).toBe(false)
    const score = actAfter([blank], [{ key: 'g/four/score/alder/3/1/card', value: 4 }])
    expect(canThrow(outingWith([blank, score]))).toBe(false)
  })
})

describe('the twos of the day', () => {
  const withTwos = (scores: unknown, change: object = {}) =>
    twosOf(outingWith([founding({ scores, closed: [], ...change })]))

  test('are gross twos on any hole, of each ball in its order of play', () => {
    const blank = Array<number | null>(18).fill(null)
    const cards = [
      { ball: 'alder', holes: blank.map((_, place) => (place === 2 ? 2 : 4)) },
      { ball: 'cedar', holes: blank.map((_, place) => (place === 0 || place === 11 ? 2 : 5)) },
    ]
    expect(withTwos(cards)).toEqual([
      { ball: 'alder', hole: 3, lap: 1 },
      { ball: 'cedar', hole: 1, lap: 1 },
      { ball: 'cedar', hole: 12, lap: 1 },
    ])
  })

  test('are none while two scores stand, nor on a hole out of play', () => {
    const ops = [founding({ scores: [{ ball: 'alder', holes: [2, ...Array<null>(17).fill(null)] }] })]
    expect(twosOf(outingWith(ops))).toHaveLength(1)
    const other = makeOp([], 'other', [{ key: 'g/four/score/alder/1/1/card', value: 3, replaces: [] }])
    expect(twosOf(outingWith([...ops, other]))).toEqual([])
    const out = actAfter(ops, [{ key: 'hole-out/1/1', value: { counts: 'nothing', reason: null } }])
    expect(twosOf(outingWith([...ops, out]))).toEqual([])
  })
})
