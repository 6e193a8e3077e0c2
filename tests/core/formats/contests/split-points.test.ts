import { describe, expect, it } from 'vitest'
import { toNumber } from '#core/values/fraction.ts'
import { hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'

const ids = ['alder', 'birch', 'cedar'] as const

const points = (
  format: 'nine-points' | 'split-sixes',
  byHole: readonly (readonly Written[])[],
  more: Partial<PlayedGame> = {},
) =>
  resultOf('shares', {
    format,
    sides: ids.map(id => [id]),
    scores: Object.fromEntries(ids.map((id, at) => [id, byHole.map(scores => scores[at] ?? null)])),
    ...more,
  })

const shares = (result: ReturnType<typeof points>, count: number) =>
  result.holes.slice(0, count).map(each => each.shares?.map(toNumber) ?? null)

// Common practice; published in descriptions of the game, among them a blog on split sixes, seen second-hand.
describe('split sixes', () => {
  it('share the points of places that tie, a pick-up behind every number', () => {
    const result = points('split-sixes', [
      [4, 4, 5],
      [4, 5, 6],
      [5, 5, 5],
      [3, 4, 4],
      [4, 5, 'picked-up'],
      [4, 'picked-up', 'picked-up'],
    ])
    expect(shares(result, 6)).toEqual([
      [3, 3, 0],
      [4, 2, 0],
      [2, 2, 2],
      [4, 1, 1],
      [4, 2, 0],
      [4, 1, 1],
    ])
    expect(result.lines.map(({ side, total, place }) => [side[0], toNumber(total), place])).toEqual([
      ['alder', 21, 1],
      ['birch', 11, 2],
      ['cedar', 4, 3],
    ])
  })
})

// Common practice: 5-3-1, 4-4-1, 5-2-2, 3-3-3.
describe('nine points', () => {
  it('give nine a hole', () => {
    const result = points('nine-points', [
      [3, 4, 5],
      [4, 4, 5],
      [4, 5, 5],
      [4, 4, 4],
    ])
    expect(shares(result, 4)).toEqual([
      [5, 3, 1],
      [4, 4, 1],
      [5, 2, 2],
      [3, 3, 3],
    ])
    expect(result.holes[0]?.pot).toBe(9)
  })

  it('are played off the lowest', () => {
    const result = points('nine-points', [], { handicaps: { alder: 4, birch: 10, cedar: 22 } })
    expect([...result.strokes.values()].map(({ strokes }) => strokes)).toEqual([0, 6, 18])
  })

  it('leave a hole open for a blank, and for two scores that would share it otherwise', () => {
    const result = points('nine-points', [
      [3, 4, null],
      [[3, 4], 4, 5],
      [[2, 3], 4, 5],
    ])
    expect(shares(result, 3)).toEqual([null, null, [5, 3, 1]])
    expect([result.unsettled, result.isFinished]).toEqual([[hole(2), hole(3)], false])
  })
})
