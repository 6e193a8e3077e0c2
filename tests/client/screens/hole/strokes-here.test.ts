import { describe, expect, test } from 'vitest'
import { standsOf } from '#client/screens/hole/stands.ts'
import { strokesHere } from '#client/screens/hole/strokes-here.ts'
import { levelsOf } from '#core/outing/levels.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import { type Change, outingOfPlain, plainWith } from '#tests/kit/plain-outing.ts'
import { ball, hole } from '#tests/kit/played-game.ts'

const own = ['alder', 'birch', 'cedar', 'rowan'].map(id => [id])
const pairs = [
  ['alder', 'cedar'],
  ['birch', 'rowan'],
]

/** Course handicaps at Quillmoor: Alder 14, Birch 7, Cedar 21, Rowan 11; every game at 100 %. */
function outingWith(change: Change = {}) {
  const outing = outingOfPlain(plainWith(change))
  return { outing, prepared: levelsOf(outing).prepared, results: resultsOf(outing) }
}

const here = (change: Change, player: string, number: number) => {
  const { outing, prepared } = outingWith(change)
  return strokesHere(outing, prepared, ball(player), hole(number))
}

describe('strokes on a hole', () => {
  test('are told per game where the games differ', () => {
    // Index 11: of 14 strokes one, of the 7 in the match none.
    expect(here({}, 'alder', 4)).toEqual([
      { words: 'match', strokes: 0 },
      { words: 'points', strokes: 1 },
    ])
  })

  test('are told once where all games agree, and not at all where there is none', () => {
    expect(here({}, 'alder', 5)).toEqual([{ words: 'both', strokes: 1 }])
    expect(here({}, 'birch', 4)).toEqual([])
  })

  test('gather the games that give the same', () => {
    const games = [
      { id: 'a', format: 'four-ball-match', sides: pairs, allowance: 100 },
      { id: 'b', format: 'skins', sides: own, allowance: 100 },
      { id: 'c', format: 'stableford', sides: own, allowance: 100 },
    ]
    expect(here({ games, main: undefined }, 'alder', 4)).toEqual([
      { words: 'match', strokes: 0 },
      { words: 'skins, points', strokes: 1 },
    ])
  })

  test('name two games of one measure in full where they differ', () => {
    const games = [
      { id: 'a', format: 'stableford', sides: own, allowance: 100 },
      { id: 'b', format: 'four-ball-stableford', sides: pairs, allowance: 50 },
    ]
    expect(here({ games, main: undefined }, 'alder', 4)).toEqual([
      { words: 'Stableford', strokes: 1 },
      { words: 'Four-ball Stableford', strokes: 0 },
    ])
  })

  test('are told per match in a three-ball, where each pair has a difference of its own', () => {
    const games = [{ id: 'a', format: 'three-ball-match', sides: own.slice(0, 3), allowance: 100 }]
    // Index 5: Alder has seven strokes from Birch and gives Cedar seven.
    expect(here({ games, main: undefined }, 'alder', 7)).toEqual([
      { words: 'v Birch', strokes: 1 },
      { words: 'v Cedar', strokes: 0 },
    ])
    expect(here({ games, main: undefined }, 'birch', 7)).toEqual([])
  })

  test('of a gross game are none', () => {
    const games = [{ id: 'a', format: 'stroke-play-gross', sides: own }]
    expect(here({ games, main: undefined }, 'alder', 5)).toEqual([])
  })
})

describe('how the games stand on a hole', () => {
  const stands = (change: Change, number: number) => {
    const { outing, results } = outingWith(change)
    const group = ['alder', 'birch', 'cedar', 'rowan'].map(ball)
    return standsOf(outing, results, group, hole(number)).map(({ label, words }) => `${label}: ${words}`)
  }

  test('tell each match of the group, and no total', () => {
    expect(stands({ scores: [] }, 1)).toEqual(['Four-ball Alder & Cedar v Birch & Rowan: all square, 18 to play'])
  })

  test('tell the parts that the hole is in', () => {
    const games = [{ id: 'a', format: 'nassau', sides: pairs, allowance: 100 }]
    expect(stands({ games, main: undefined, scores: [] }, 12)).toEqual([
      'Nassau, Back nine: all square, 9 to play',
      'Nassau, Overall: all square, 18 to play',
    ])
  })

  test('tell how many skins lie on the hole once one is carried', () => {
    const games = [{ id: 'a', format: 'skins-gross', sides: own }]
    const scores = ['alder', 'birch', 'cedar', 'rowan'].map(each => ({ ball: each, holes: [4] }))
    expect(stands({ games, main: undefined, scores }, 1)).toEqual([])
    expect(stands({ games, main: undefined, scores }, 2)).toEqual(['Skins: 2 skins on this hole'])
  })
})
