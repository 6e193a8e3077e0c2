import { describe, expect, test } from 'vitest'
import { levelAtEnd } from '#client/screens/hole/level-at-end.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import type { GroupId } from '#core/values/ids.ts'
import { autumnDay, type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

/** Off plain strokes of nought every hole is what its scores are: level as long as nobody wins one. */
const players = autumnDay.players.map(player => ({ ...player, handicap: { strokes: 0 } }))
const level = autumnDay.players.map(({ id }) => ({ ball: id, holes: Array(18).fill(5) }))

function askedAt(hole: number, change: Change = {}): string | null {
  const outing = outingOfPlain(plainWith({ players, scores: level, ...change }))
  const group = must(outing.groups.get('four' as GroupId), 'the group')
  return levelAtEnd(resultsOf(outing), group, { hole, lap: 1 })?.game ?? null
}

describe('a match level after its last hole (Rules of Golf 2023, rule 3.2a)', () => {
  test('is asked about on the last hole, and nowhere before', () => {
    expect(askedAt(18)).toBe('match')
    expect(askedAt(17)).toBeNull()
  })

  test('is not asked about while a hole is open, once one side is up, and once it is agreed', () => {
    const [first, ...others] = level
    expect(
      askedAt(18, {
        scores: [
          { ball: 'alder', holes: Array(17).fill(5) },
          ...others.map(each => ({ ...each, holes: each.holes.slice(0, 17) })),
        ],
      }),
    ).toBeNull()
    expect(askedAt(18, { scores: [{ ball: first?.ball, holes: [4, ...Array(17).fill(5)] }, ...others] })).toBeNull()
    const agreedResults = [{ game: 'match', between: ['alder', 'birch'], won: null, by: 0, left: 0 }]
    expect(askedAt(18, { agreedResults })).toBeNull()
  })
})
