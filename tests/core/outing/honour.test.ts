import { describe, expect, it } from 'vitest'
import { honourOf } from '#core/outing/honour.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { GroupId } from '#core/values/ids.ts'
import { autumnDay, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const [match = {}, points = {}] = autumnDay.games
type Holes = readonly (number | string | null)[]

/** On a hole, with these scores of Alder, Birch, Cedar and Rowan. */
function honour(hole: number, games: readonly object[], holes: readonly Holes[]) {
  const scores = ['alder', 'birch', 'cedar', 'rowan'].map((ball, place) => ({ ball, holes: holes[place] ?? [] }))
  const outing = outingOfPlain(plainWith({ games, main: undefined, scores }))
  const group = outing.groups.get('four' as GroupId)
  return group ? honourOf(outing, resultsOf(outing), group, { hole, lap: 1 }) : null
}

describe('the honour', () => {
  it('goes to the lowest gross score of the hole before (Rules of Golf 2023, rule 6.4b)', () => {
    expect(honour(2, [points], [[5], [4], [6], [5]])).toEqual({ balls: ['birch'], by: 'score' })
  })

  it('stays where it was after a hole that two have lowest', () => {
    expect(
      honour(
        3,
        [points],
        [
          [5, 5],
          [4, 5],
          [6, 6],
          [5, 6],
        ],
      ),
    ).toEqual({ balls: ['birch'], by: 'score' })
  })

  it('is the winning side’s in a match between all, and stays after a half', () => {
    // Off the lowest, Birch: Alder and Cedar have a stroke on the 1st (index 7), and on the 2nd (index 3) Rowan too.
    expect(honour(2, [points, match], [[4], [4], [6], [5]])).toEqual({ balls: ['alder', 'cedar'], by: 'match' })
    expect(
      honour(
        3,
        [match],
        [
          [4, 6],
          [4, 5],
          [6, 7],
          [5, 7],
        ],
      ),
    ).toEqual({ balls: ['alder', 'cedar'], by: 'match' })
  })

  it('is nobody’s on the first hole, after open or doubtful holes, and while all were level', () => {
    expect(honour(1, [points], [[5], [4], [6], [5]])).toBeNull()
    expect(honour(2, [points], [[5], [4], [6]])).toBeNull()
    expect(honour(2, [match], [[5], [], [], []])).toBeNull()
    expect(honour(2, [points], [[4], [4], [4], [4]])).toBeNull()
  })

  it('passes over a ball picked up', () => {
    expect(honour(2, [points], [['picked-up'], [6], [7], [8]])?.balls).toEqual(['birch'])
  })
})
