import { describe, expect, test } from 'vitest'
import { tieLines } from '#client/screens/board/TiesOnBoard.tsx'
import { tieAtEnd, tieLeft } from '#client/screens/hole/tie-left.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { must } from '#core/values/assert.ts'
import type { GroupId } from '#core/values/ids.ts'
import { autumnDay, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'

const order = [...Array(18).keys()].map(place => [place + 1, 1])
const fives = Array(18).fill(5)
const ties = { method: 'gross', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'extra-holes' }

/** Four who have five everywhere in stroke play, and these scores on the 1st again where it is played. */
function dayWith(again: readonly number[], change: object = {}) {
  const ids = autumnDay.players.map(({ id }) => id)
  const scores = ids.flatMap((ball, place) => [
    { ball, holes: fives },
    ...(again[place] === undefined ? [] : [{ ball, lap: 2, holes: [again[place], ...Array(17).fill(null)] }]),
  ])
  const groups = [{ ...autumnDay.groups[0], order: again.length > 0 ? [...order, [1, 2]] : order }]
  const games = [{ id: 'gross', format: 'stroke-play-gross', sides: ids.map(id => [id]), ties, ...change }]
  const outing = outingOfPlain(plainWith({ games, main: 'gross', groups, scores }))
  const results = resultsOf(outing)
  const group = must(outing.groups.get('four' as GroupId), 'the group')
  return { outing, results, left: tieLeft(results, group), asked: tieAtEnd(outing, results, group) }
}

describe('a tie that is to be played off', () => {
  test('is the group’s own, once the countback leaves it and the terms say extra holes', () => {
    expect(dayWith([]).left?.flat()).toEqual(['alder', 'birch', 'cedar', 'rowan'])
    expect(dayWith([], { ties: { ...ties, ifStillTied: 'play-off' } }).left).toBeNull()
    expect(dayWith([], { ties: null }).left).toBeNull()
  })

  test('is left of those alone who are level after the extra hole, and the board says what came of it', () => {
    const { outing, results, left } = dayWith([4, 5, 5, 6])
    expect(left?.flat()).toEqual(['birch', 'cedar'])
    const result = [...results.games.values()][0]
    const [tie] = result?.kind === 'total' ? result.ties : []
    expect(tieLines(outing, must(tie, 'a tie'))).toEqual([
      'Alder before Birch by the play-off hole: 4 to 5',
      'Birch and Cedar are still tied: a play-off over extra holes decides',
      'Cedar before Rowan by the play-off hole: 5 to 6',
    ])
    expect(dayWith([4, 5, 6, 7]).left).toBeNull()
  })

  test('asks for one hole more once the last one has its scores, not before', () => {
    expect(dayWith([]).asked?.flat()).toEqual(['alder', 'birch', 'cedar', 'rowan'])
    expect(dayWith([4, 5]).left?.flat()).toEqual(['alder', 'birch', 'cedar', 'rowan'])
    expect(dayWith([4, 5]).asked).toBeNull()
    expect(dayWith([4, 5, 5, 6]).asked?.flat()).toEqual(['birch', 'cedar'])
    expect(dayWith([4, 5, 6, 7]).asked).toBeNull()
  })
})
