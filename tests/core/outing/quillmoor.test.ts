import { describe, expect, it } from 'vitest'
import { gameIn, settledWith } from '#tests/kit/plain-outing.ts'

/*
 * The card of a group at Quillmoor: course handicaps 14, 7, 21 and 11. The ticks were drawn by hand for the printed
 * card from the stroke index; a digit is the strokes on that hole, from 1 to 18.
 */
const ticks = {
  match: {
    alder: { strokes: 7, byHole: '110 010 100 010 010 010' },
    birch: { strokes: 0, byHole: '000 000 000 000 000 000' },
    cedar: { strokes: 14, byHole: '110 110 111 110 111 011' },
    rowan: { strokes: 4, byHole: '010 010 000 010 010 000' },
  },
  points: {
    alder: { strokes: 14, byHole: '110 110 111 110 111 011' },
    birch: { strokes: 7, byHole: '110 010 100 010 010 010' },
    cedar: { strokes: 21, byHole: '121 121 111 111 121 111' },
    rowan: { strokes: 11, byHole: '110 110 101 110 011 010' },
  },
} as const

/** The small figures of the printed card: level of each three, and of the round. */
const levels = {
  alder: [14, 13, 16, 13, 16, 14, 86],
  birch: [14, 12, 14, 12, 14, 13, 79],
  cedar: [16, 15, 16, 14, 17, 15, 93],
  rowan: [14, 13, 15, 13, 15, 13, 83],
}

const settled = settledWith()
const inThrees = (digits: readonly number[]): string => (digits.join('').match(/.{3}/g) ?? []).join(' ')

describe('strokes where the printed card has its ticks', () => {
  it.each(
    (['match', 'points'] as const).flatMap(game =>
      Object.entries(ticks[game]).map(([ball, expected]) => ({ game, ball, ...expected })),
    ),
  )('$game: $ball receives $strokes', ({ game, ball, strokes, byHole }) => {
    const found = gameIn(settled, game, game === 'match' ? 'match' : 'total').strokes.find(each => each.ball === ball)
    expect(found?.strokes).toBe(strokes)
    expect(inThrees(found?.byHole.map(hole => hole.strokes) ?? [])).toBe(byHole)
  })
})

describe('level of the printed card', () => {
  it.each(Object.entries(levels))('%s', (ball, expected) => {
    const threes = settled.cards.find(card => card.ball === ball)?.threes.map(({ level }) => level) ?? []
    expect([...threes, threes.reduce((sum, level) => sum + level, 0)]).toEqual(expected)
  })

  it('the threes have the pars of the card', () => {
    expect(settled.cards[0]?.threes.map(({ par }) => par)).toEqual([12, 11, 13, 11, 13, 12])
  })
})

/*
 * Worked by hand. Net scores of the first three holes, strokes of the match:
 * 1: Alder 4 and Birch 4 are level with Rowan 4: halved. 2: Alder 5, Cedar 6; Birch 5, Rowan 5: halved.
 * 3: Alder 4, Cedar 4; Birch 3: lost.
 */
describe('the match by better net ball', () => {
  const [match] = gameIn(settled, 'match', 'match').matches
  it('goes hole by hole', () => {
    expect(match?.holes.slice(0, 3).map(({ result }) => result)).toEqual([0, 0, -1])
    expect(match?.holes[2]?.values.map(({ value }) => value)).toEqual([4, 3])
    expect(match?.names).toEqual([
      ['Alder', 'Cedar'],
      ['Birch', 'Rowan'],
    ])
  })

  it('is over when a side is up by more holes than are left, in the notation of the trade', () => {
    const played = (match?.holes ?? []).map(({ result }) => result)
    expect(match?.isFinished).toBe(true)
    expect(match?.text).toBe(textByCounting(played.filter(result => result !== null)))
  })
})

/** Counts a match without looking at how core does. */
function textByCounting(results: readonly number[]): string {
  let up = 0
  for (const [place, result] of results.entries()) {
    up += result
    const left = results.length - place - 1
    if (Math.abs(up) > left) return left === 0 ? `${Math.abs(up)} up` : `${Math.abs(up)} & ${left}`
  }
  return 'halved'
}

/*
 * Worked by hand for Birch, strokes of the points: 4 less 1 on a par 4 is one under: 3 points; 5 less 1 on a par 5: 3;
 * 3 on a par 3: 2.
 */
it('points go with the playing handicap, not with the strokes of the match', () => {
  const birch = gameIn(settled, 'points', 'total').lines.find(({ side }) => side[0] === 'birch')
  expect(birch?.holes.slice(0, 3).map(({ value }) => value)).toEqual([3, 3, 2])
})
