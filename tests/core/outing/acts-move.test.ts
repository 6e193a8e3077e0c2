import { describe, expect, test } from 'vitest'
import type { Op } from '#core/log/op.ts'
import { undoOf } from '#core/log/undo.ts'
import { scoreFact } from '#core/outing/acts.ts'
import { moveFacts, nextHoleOf } from '#core/outing/acts-move.ts'
import { faultsOfPlain } from '#core/outing/plain-faults.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import type { GameId, GroupId } from '#core/values/ids.ts'
import { actAfter, alder, groupA, groupB, outingWith, startOp, stateWith } from '#tests/kit/two-groups.ts'

const at = (hole: number) => ({ hole, lap: 1 })

/** A history in which groups write Alder's holes one after the other. */
function written(ops: readonly Op[], group: GroupId, scores: Readonly<Record<number, number>>): Op[] {
  const all = [...ops]
  for (const [hole, score] of Object.entries(scores)) {
    const fact = scoreFact({ group, ball: alder, ...at(Number(hole)), record: 'card', score })
    all.push(actAfter(all, `phone-${group}`, [fact]))
  }
  return all
}

const moved = (ops: readonly Op[], to: GroupId, from: number): Op[] => [
  ...ops,
  actAfter(ops, 'desk', moveFacts(outingWith(ops), { ball: alder, to, from: at(from) })),
]

/** By hole. */
const scoresOf = (ops: readonly Op[]): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    [...must(outingWith(ops).cards.get(alder), 'a card').scores].flatMap(([key, found]) =>
      found.kind === 'one' ? [[key, found.score]] : [],
    ),
  )

const pointsOf = (ops: readonly Op[]) => {
  const game = resultsOf(outingWith(ops)).games.get('points' as GameId)
  return game?.kind === 'total' ? game.lines.find(({ side }) => side[0] === alder)?.total : null
}

describe('a ball that is moved to another group', () => {
  const played = written([], groupA, { 1: 5, 2: 6, 3: 4 })

  test('keeps every score where it was made, and its points', () => {
    const ops = moved(played, groupB, 4)
    expect(scoresOf(ops)).toEqual(scoresOf(played))
    expect(pointsOf(ops)).toBe(pointsOf(played))
    const outing = outingWith(ops)
    expect(outing.groups.get(groupB)?.balls).toEqual(['birch', 'alder'])
    expect(outing.balls.get(alder)?.elsewhere).toEqual([
      {
        group: groupA,
        holes: [
          [1, 1],
          [2, 1],
          [3, 1],
        ],
      },
    ])
  })

  test('is written by its new group from then on; what the old one still writes is listed and counts nothing', () => {
    const ops = written(written(moved(played, groupB, 4), groupB, { 4: 5 }), groupA, { 5: 9 })
    expect(scoresOf(ops)).toEqual({ ...scoresOf(played), '4/1': 5 })
    expect(outingWith(ops).stray.map(({ hole }) => hole)).toEqual([5])
  })

  test('leaves with its group holes that nobody here has heard of yet', () => {
    const late = moved(written([], groupA, { 1: 5 }), groupB, 4)
    const ops = written(late, groupA, { 2: 6, 3: 4 })
    expect(scoresOf(ops)).toEqual(scoresOf(played))
    expect(outingWith(ops).stray).toEqual([])
  })

  test('keeps a hole behind the move that its group has written', () => {
    const ops = moved(written(played, groupA, { 6: 5 }), groupB, 4)
    expect(scoresOf(ops)).toEqual({ ...scoresOf(played), '6/1': 5 })
  })

  test('comes back with every hole where it was played', () => {
    const away = written(moved(played, groupB, 4), groupB, { 4: 5, 5: 6 })
    const ops = written(moved(away, groupA, 6), groupA, { 6: 3 })
    expect(scoresOf(ops)).toEqual({ ...scoresOf(away), '6/1': 3 })
    expect(outingWith(ops).balls.get(alder)?.elsewhere).toEqual([
      {
        group: groupB,
        holes: [
          [4, 1],
          [5, 1],
        ],
      },
    ])
  })

  test('can be taken back', () => {
    const ops = moved(played, groupB, 4)
    const taken = must(ops.at(-1), 'the move')
    const back = [...ops, actAfter(ops, 'desk', undoOf(stateWith(ops), [startOp, ...ops], taken).facts)]
    expect(outingWith(back).balls.get(alder)).toEqual(outingWith(played).balls.get(alder))
  })

  test('stands in a plain file as it was played', () => {
    const file = must(plainOf(outingWith(moved(played, groupB, 4))), 'a file')
    expect(faultsOfPlain(file)).toEqual([])
    expect(file.moved).toMatchObject([{ ball: 'alder', group: 'a' }])
  })

  test('does not move to where it is, nor to a group that is not there', () => {
    const outing = outingWith(played)
    expect(moveFacts(outing, { ball: alder, to: groupA, from: at(4) })).toEqual([])
    expect(moveFacts(outing, { ball: alder, to: 'none' as GroupId, from: at(4) })).toEqual([])
  })

  test('goes on from its first hole without a score', () => {
    const outing = outingWith(played)
    expect(nextHoleOf(outing, alder, must(outing.groups.get(groupA), 'the group'))).toEqual(at(4))
  })
})
