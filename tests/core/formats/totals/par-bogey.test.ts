import { describe, expect, it } from 'vitest'
import { card, cardOf, lineOf, playersWith, singles, totalGame, valuesOf } from '#tests/kit/total-games.ts'

// Practice case ST-07 (Rules of Golf 2023, rule 21.3): playing handicap 15.
const gross = [5, 6, 4, 'picked-up', 5, 3, 6, 6, 5, 5, 4, 4, 7, 6, 5, 'picked-up', 5, 5] as const

describe('par/bogey', () => {
  it('wins two, halves ten and loses six: four down', () => {
    const change = { players: playersWith({ courseHandicap: 15 }) }
    const game = totalGame('par-bogey', [['alder']], [cardOf('alder', gross)], {}, change)
    const line = lineOf(game, 'alder')
    const count = (result: number) => valuesOf(line).filter(value => value === result).length
    expect(game.unit).toBe('holes')
    expect([count(1), count(0), count(-1), line.total]).toEqual([2, 10, 6, -4])
    expect(line).toMatchObject({ overPar: null, isNoReturn: false, isFinished: true })
  })

  it('ranks by holes up, whoever has played more', () => {
    const scores = [card('alder', { 1: 3 }, 1), card('birch', { 1: 5 }), card('cedar', { 1: 3, 2: 4 }, 9)]
    expect(
      totalGame('par-bogey', singles, scores).lines.map(({ side, total, place }) => [side[0], total, place]),
    ).toEqual([
      ['cedar', 2, 1],
      ['alder', 1, 2],
      ['birch', -1, 3],
      ['rowan', 0, null],
    ])
  })
})
