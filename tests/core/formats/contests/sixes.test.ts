import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { toNumber } from '#core/values/fraction.ts'
import { type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'

const ids = ['alder', 'birch', 'cedar', 'rowan'] as const
const four = 4

/** Who makes a three on each hole; everybody else a four. */
const sixes = (threes: readonly (number | null)[], more: Partial<PlayedGame> = {}) =>
  resultOf('parts', {
    format: 'sixes',
    sides: ids.map(id => [id]),
    scores: Object.fromEntries(
      ids.map((id, at): [string, Written[]] => [id, threes.map(player => (player === at ? 3 : four))]),
    ),
    ...more,
  })

const none = (holes: number) => Array<null>(holes).fill(null)

// Common practice; a golf reference site describes it, and misprints of the second six are known.
describe('partners that change every six holes', () => {
  it('make a point for a six won, and a half for one halved', () => {
    // Alder and Birch 2 up; level; Birch and Cedar 1 up.
    const result = sixes([0, 1, ...none(4), ...none(6), 2, ...none(5)])
    const totals = ids.map(id => toNumber(result.lines.find(({ side }) => side[0] === id)?.total ?? none0))
    expect(totals).toEqual([1.5, 2.5, 1.5, 0.5])
    expect(result.parts.map(({ match }) => match?.sides)).toEqual([
      [
        ['alder', 'birch'],
        ['cedar', 'rowan'],
      ],
      [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
      [
        ['alder', 'rowan'],
        ['birch', 'cedar'],
      ],
    ])
  })

  it('are decided one by one', () => {
    expect(sixes([0, 0, 0, 0]).parts.map(({ shares }) => shares?.map(toNumber) ?? null)).toEqual([
      [1, 1, 0, 0],
      null,
      null,
    ])
  })

  it('come in the order in which the four stand', () => {
    const sides = [['alder'], ['rowan'], ['birch'], ['cedar']]
    expect(sixes([], { sides }).parts.map(({ match }) => match?.sides[0])).toEqual([
      ['alder', 'rowan'],
      ['alder', 'birch'],
      ['alder', 'cedar'],
    ])
  })

  it('change in order of play, and every three over nine holes', () => {
    const first = (round: ReturnType<typeof roundFrom>) => sixes([], { round }).parts.map(({ holes }) => holes[0])
    expect(first(roundFrom(10, 18, 18))).toEqual(['10/1', '16/1', '4/1'])
    expect(first(roundFrom(1, 9))).toEqual(['1/1', '4/1', '7/1'])
  })
})

const none0 = { numerator: -1, denominator: 1 }
