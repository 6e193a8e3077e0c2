import { describe, expect, test } from 'vitest'
import { holeInPlay, isAllIn, isCurrentFor } from '#client/screens/hole/hole-in-play.ts'
import type { Group } from '#core/outing/outing.ts'
import type { GroupId } from '#core/values/ids.ts'
import { type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'
import { ball } from '#tests/kit/played-game.ts'

const players = ['alder', 'birch', 'cedar', 'rowan'] as const

/** So many holes written for each, from the 1st. */
function played(holes: readonly number[], change: Change = {}) {
  const scores = players.map((player, place) => ({ ball: player, holes: Array(holes[place] ?? 0).fill(5) }))
  const outing = outingOfPlain(plainWith({ scores, ...change }))
  const group = outing.groups.get('four' as GroupId) as Group
  const currentFor = (player: string): number[] =>
    group.round.filter(at => isCurrentFor(outing, group, ball(player), at)).map(({ hole }) => hole)
  return { inPlay: holeInPlay(outing, group)?.hole, isAllIn: isAllIn(outing, group), currentFor }
}

describe('the hole that the group is on', () => {
  test('is the first with a score to come; only that one may be scored unasked', () => {
    const { inPlay, currentFor } = played([6, 6, 6, 6])
    expect(inPlay).toBe(7)
    expect(currentFor('alder')).toEqual([7])
  })

  test('two holes behind is normal: the 7th and 8th go in on the 9th tee', () => {
    expect(played([6, 6, 6, 6]).currentFor('birch')).toContain(7)
    expect(played([7, 7, 7, 7]).currentFor('birch')).toEqual([8])
    // One phone is two holes behind the others: every hole between is open, for all.
    const { inPlay, currentFor } = played([8, 8, 8, 6])
    expect(inPlay).toBe(7)
    expect(currentFor('rowan')).toEqual([7, 8, 9])
    expect(currentFor('alder')).toEqual([7, 8, 9])
  })

  test('a ball’s own next hole is current, wherever the others are', () => {
    const { currentFor } = played([2, 9, 9, 9])
    expect(currentFor('alder')).toContain(3)
    expect(currentFor('birch')).toContain(10)
  })

  test('waits for nobody who has left, and for no hole out of play', () => {
    const absences = [{ ball: 'rowan', leftAt: [10, 1] }]
    expect(played([10, 10, 10, 9], { absences }).inPlay).toBe(11)
    expect(played([6, 6, 6, 6], { holesOut: [{ hole: 7, counts: 'nothing' }] }).inPlay).toBe(8)
  })

  test('is the last once all are in, and then every score is asked about', () => {
    const { inPlay, isAllIn: all, currentFor } = played([18, 18, 18, 18])
    expect(inPlay).toBe(18)
    expect(all).toBe(true)
    expect(currentFor('alder')).toEqual([])
  })
})
