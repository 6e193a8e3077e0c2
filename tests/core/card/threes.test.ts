import { describe, expect, it } from 'vitest'
import { overLevelOf, threesAgainstLevel } from '#core/card/level.ts'
import { orderOfPlay, roundFrom } from '#core/card/order-of-play.ts'
import { type HoleKey, type HoleScore, holeKey } from '#core/card/score.ts'
import { threesOf } from '#core/card/threes.ts'

const inWords = (holes: readonly { readonly hole: number; readonly lap: number }[]) =>
  threesOf(holes).map(three => three.map(({ hole, lap }) => (lap === 1 ? `${hole}` : `${hole}'`)).join(' '))

describe('threes in order of play', () => {
  it('are six of eighteen holes', () => {
    expect(inWords(roundFrom(1, 18))).toEqual(['1 2 3', '4 5 6', '7 8 9', '10 11 12', '13 14 15', '16 17 18'])
  })

  it('go by the order of play from any start', () => {
    expect(inWords(roundFrom(14, 18))).toEqual(['14 15 16', '17 18 1', '2 3 4', '5 6 7', '8 9 10', '11 12 13'])
  })

  it('are three of nine holes, whichever nine', () => {
    expect(inWords(roundFrom(1, 9, 18))).toEqual(['1 2 3', '4 5 6', '7 8 9'])
    expect(inWords(roundFrom(10, 9, 18))).toEqual(['10 11 12', '13 14 15', '16 17 18'])
  })

  it('tell the two laps of the same nine apart', () => {
    expect(inWords(roundFrom(1, 18, 9)).slice(2, 4)).toEqual(['7 8 9', "1' 2' 3'"])
    expect(inWords(roundFrom(8, 18, 9))).toEqual(['8 9 1', '2 3 4', '5 6 7', "8' 9' 1'", "2' 3' 4'", "5' 6' 7'"])
  })
})

describe('the order of play', () => {
  it('is the holes as they are numbered when nobody says otherwise', () => {
    expect(orderOfPlay(null, 9).round.map(({ hole }) => hole)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
  })

  it('takes what comes after the round as extra holes, and a hole named twice once', () => {
    const listed = [...roundFrom(1, 9), { hole: 1, lap: 2 }, { hole: 3, lap: 1 }].map(
      ({ hole, lap }) => [hole, lap] as const,
    )
    expect(orderOfPlay(listed, 9).extra).toEqual([{ hole: 1, lap: 2 }])
  })
})

describe('a three against level', () => {
  const round = roundFrom(1, 9)
  const levels = new Map(round.map(played => [holeKey(played), 5] as const))
  const threes = (scores: Readonly<Record<HoleKey, HoleScore>>) =>
    threesAgainstLevel(
      round,
      {
        isClosed: false,
        scores: new Map(
          Object.entries(scores).map(([key, score]) => [key as HoleKey, { kind: 'one', score, entries: [] } as const]),
        ),
      },
      new Map(round.map(played => [holeKey(played), 4] as const)),
      levels,
    )

  it('counts strokes over level, a pick-up as two, a hole not played nowhere', () => {
    expect(overLevelOf(7, 5)).toBe(2)
    expect(overLevelOf('picked-up', 5)).toBe(2)
    expect(overLevelOf('not-played', 5)).toBeNull()
    const [first, second, third] = threes({ '1/1': 4, '2/1': 'picked-up', '3/1': 5, '4/1': 6, '7/1': 'not-played' })
    expect(first).toMatchObject({ number: 1, par: 12, level: 15, overLevel: 1, isClosed: true })
    expect(second).toMatchObject({ number: 2, overLevel: 1, isClosed: false })
    expect(third).toMatchObject({ number: 3, overLevel: null, isClosed: false })
  })
})
