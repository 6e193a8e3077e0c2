import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { formatMatchLine } from '#core/formats/match-text.ts'
import { toNumber } from '#core/values/fraction.ts'
import { ball, hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

const sixThrees = (
  sides: readonly (readonly string[])[],
  scores: Readonly<Record<string, readonly Written[]>>,
  more: Partial<PlayedGame> = {},
) => resultOf('parts', { format: 'six-threes-match', sides, scores, ...more })

const shares = (result: ReturnType<typeof sixThrees>) =>
  result.parts.map(part => part.shares?.map(each => toNumber(each).toFixed(2)) ?? null)

/** Pars with strokes over them, in order of play from hole 1. */
const over = (...strokes: readonly (number | string | null)[]): Written[] =>
  strokes.map((each, place) => (typeof each === 'number' ? (quillmoor.pars[place] ?? 0) + each : (each as Written)))

// Our own game: what the rule says is what its text in the contest says.
describe('six threes between two sides', () => {
  it('are six matches of three holes, a point each, shared when level', () => {
    const result = sixThrees([['alder'], ['birch']], {
      alder: over(-1, 0, 0, 0, 0, 0, 0, 0, 0),
      birch: over(0, 0, 0, 0, 0, 0, 0, 0, -1),
    })
    expect(shares(result)).toEqual([['1.00', '0.00'], ['0.50', '0.50'], ['0.00', '1.00'], null, null, null])
    expect(result.lines.map(({ total, place, isTied }) => [toNumber(total), place, isTied])).toEqual([
      [1.5, 1, true],
      [1.5, 1, true],
    ])
  })

  it('start afresh every time, and are over as soon as they must be', () => {
    const result = sixThrees([['alder'], ['birch']], { alder: over(-1, -1), birch: over(0, 0) })
    expect(result.parts.map(({ match }) => match && formatMatchLine(match.state)).slice(0, 2)).toEqual([
      'won 2 & 1',
      'all square, 3 to play',
    ])
  })

  it('take the better ball of two', () => {
    const result = sixThrees(
      [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
      { alder: over(1), cedar: over(-1), birch: over(0), rowan: over(0) },
    )
    expect(result.parts[0]?.match?.holes[0]?.result).toBe(1)
  })

  it('are three over nine holes, and follow the order of play', () => {
    const first = (round: ReturnType<typeof roundFrom>) =>
      sixThrees([['alder'], ['birch']], {}, { round }).parts.map(({ holes }) => holes[0])
    expect(first(roundFrom(1, 9))).toEqual(['1/1', '4/1', '7/1'])
    expect(first(roundFrom(17, 18, 18))).toEqual(['17/1', '2/1', '5/1', '8/1', '11/1', '14/1'])
  })
})

describe('six threes each for themselves', () => {
  const sides = [['alder'], ['birch'], ['cedar']]

  it('give the point for the most Stableford points, shared when level', () => {
    const result = sixThrees(sides, {
      alder: over(0, 0, -1, 0, 0, 0, 1, 1, 1),
      birch: over(0, 0, 0, 0, 0, 0, 1, 1, 0),
      cedar: over(3, 3, 0, 1, 0, 0, 1, 1, 0),
    })
    expect(shares(result).slice(0, 3)).toEqual([
      ['1.00', '0.00', '0.00'],
      ['0.50', '0.50', '0.00'],
      ['0.00', '0.50', '0.50'],
    ])
    expect(result.parts[0]?.tallies.map(({ points }) => points)).toEqual([7, 6, 2])
  })

  it('are decided once nobody can reach the leader, and not before', () => {
    // On hole 3, a par three, one stroke is four points.
    const through = (behind: number) =>
      shares(sixThrees(sides, { alder: over(0, 0), birch: over(behind, behind), cedar: over(3, 3) }))[0]
    expect(through(1)).toBeNull()
    expect(through(2)).toBeNull()
    const far = sixThrees(sides, { alder: over(-2, -1), birch: over(1, 1), cedar: over(3, 3) })
    expect(far.parts[0]?.tallies.map(({ points, mostPossible }) => [points, mostPossible])).toEqual([
      [7, 11],
      [2, 6],
      [0, 4],
    ])
    expect(shares(far)[0]).toEqual(['1.00', '0.00', '0.00'])
  })

  it('wait for two scores only where they matter', () => {
    const two = (first: Written) =>
      sixThrees(sides, {
        alder: [first, ...over(0, 0, 0).slice(1)],
        birch: over(0, 0, 0),
        cedar: over(2, 0, 0),
      })
    expect(shares(two([3, 5]))[0]).toBeNull()
    expect(shares(two([2, 3]))[0]).toEqual(['1.00', '0.00', '0.00'])
    expect(two([3, 5]).unsettled).toEqual([hole(1)])
  })

  it('go on without a ball that left', () => {
    const absence = { ball: ball('cedar'), joinedAt: null, leftAt: hole(1), isWithdrawn: false, reason: null }
    const result = sixThrees(
      sides,
      { alder: over(0, 0, 0), birch: over(0, 0, 0) },
      { happenings: { absences: new Map([[ball('cedar'), absence]]) } },
    )
    expect(shares(result)[0]).toEqual(['0.50', '0.50', '0.00'])
  })

  it('go against the par of each tee, which gives no points of its own', () => {
    const longer = quillmoor.pars.map((par, place) => (place === 0 ? par + 1 : par))
    const result = sixThrees(
      sides,
      { alder: quillmoor.pars, birch: quillmoor.pars, cedar: longer },
      { pars: { cedar: longer } },
    )
    expect(result.strokes.get(ball('cedar'))?.strokes).toBe(1)
    expect(shares(result)).toEqual(Array(6).fill(['0.33', '0.33', '0.33']))
  })

  it('leave out a hole that is out of play', () => {
    const result = sixThrees(
      sides,
      { alder: over(0, 0, -1), birch: over(0, 0, 0), cedar: over(0, 0, 0) },
      { happenings: { holesOut: new Map([[hole(3), { counts: 'nothing', reason: null }]]) } },
    )
    expect(shares(result)[0]).toEqual(['0.33', '0.33', '0.33'])
  })
})
