import { describe, expect, test } from 'vitest'
import { standingsOnHole } from '#client/screens/hole/standings.ts'
import { levelsOf } from '#core/outing/levels.ts'
import { must } from '#core/values/assert.ts'
import type { GroupId } from '#core/values/ids.ts'
import { type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

function standingsAt(hole: number, change: Change = {}) {
  const outing = outingOfPlain(plainWith(change))
  const group = must(outing.groups.get('four' as GroupId), 'the group')
  return standingsOnHole(outing, levelsOf(outing), group, group.balls, { hole, lap: 1 })
}

const scores = (...holes: (readonly number[])[]) =>
  ['alder', 'birch', 'cedar', 'rowan'].map((ball, place) => ({ ball, holes: holes.map(each => each[place] ?? 0) }))

describe('what the games come to on a hole', () => {
  test('is the match beside the number, with its name only where there are more', () => {
    const { head, others } = standingsAt(2, { scores: scores([3, 5, 5, 5]) })
    expect(head).toEqual({ stand: '1 up', side: 'Alder & Cedar', toPlay: '17 to play', title: '' })
    expect(others).toEqual([])
  })

  test('gives the honour to the side that won the last hole', () => {
    expect(standingsAt(2, { scores: scores([3, 5, 5, 5]) }).honour).toEqual(['alder', 'cedar'])
    expect(standingsAt(1, { scores: [] }).honour).toEqual([])
  })

  test('says after how many strokes a ball still out may be picked up, and nothing once all are in', () => {
    expect(standingsAt(1, { scores: [] }).pickUp).toBe('')
    expect(standingsAt(1, { scores: [{ ball: 'birch', holes: [3] }] }).pickUp).toMatch(
      /^May pick up after: Alder \d(?: and|,) Cedar \d$/,
    )
    expect(standingsAt(1, { scores: scores([5, 5, 5, 5]) }).pickUp).toBe('')
  })
})
