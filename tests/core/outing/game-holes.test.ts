import { describe, expect, it } from 'vitest'
import { faultsOfPlain } from '#core/outing/plain-faults.ts'
import { plainOf } from '#core/outing/plain-of.ts'
import { resultsOf } from '#core/outing/results-of.ts'
import type { GameId } from '#core/values/ids.ts'
import { autumnDay, type Change, gameIn, outingOfPlain, plainWith, settledWith } from '#tests/kit/plain-outing.ts'

const [match = {}, points = {}] = autumnDay.games
const pairs = [
  ['alder', 'cedar'],
  ['birch', 'rowan'],
]
const to9 = { to: [9, 1] }
const from10 = { from: [10, 1] }
const games = (...list: readonly object[]): Change => ({ games: list, main: 'points' })

describe('a game over some of the holes', () => {
  it('stopped after nine is what it was after nine, and another goes on with other partners', () => {
    const other = {
      ...match,
      id: 'other',
      sides: [
        ['alder', 'birch'],
        ['cedar', 'rowan'],
      ],
      ...from10,
    }
    const stopped = settledWith(games({ ...match, ...to9 }, other, points))
    const scores = autumnDay.scores.map(row => ({ ...row, holes: row.holes.slice(0, 9) }))
    const after9 = gameIn(settledWith({ ...games(match, points), scores }), 'match', 'match').matches[0]
    const frozen = gameIn(stopped, 'match', 'match').matches[0]
    expect(frozen?.holes.slice(0, 9)).toEqual(after9?.holes.slice(0, 9))
    expect(frozen?.holes.slice(9).every(({ reason }) => reason === 'out-of-play')).toBe(true)
    expect(
      gameIn(stopped, 'other', 'match')
        .matches[0]?.holes.slice(0, 9)
        .every(({ reason }) => reason === 'out-of-play'),
    ).toBe(true)
    expect(gameIn(stopped, 'points', 'total')).toEqual(gameIn(settledWith(), 'points', 'total'))
  })

  it('has the points of its holes alone, off the strokes of the whole round', () => {
    const whole = gameIn(settledWith(), 'points', 'total').lines
    const front = gameIn(settledWith(games(match, { ...points, ...to9 })), 'points', 'total').lines
    const back = gameIn(settledWith(games(match, { ...points, ...from10 })), 'points', 'total').lines
    const totalOf = (lines: typeof whole, ball: string) => lines.find(({ side }) => side[0] === ball)?.total ?? null
    for (const ball of ['alder', 'birch', 'cedar', 'rowan']) {
      expect((totalOf(front, ball) ?? 0) + (totalOf(back, ball) ?? 0)).toBe(totalOf(whole, ball))
    }
    expect(front.every(({ isFinished }) => isFinished)).toBe(true)
  })

  it('gives no point for a part of which no hole is played', () => {
    const nassau = { id: 'nassau', format: 'nassau', sides: pairs, allowance: 100 }
    const file = outingOfPlain(plainWith(games({ ...nassau, ...to9 }, points)))
    const result = resultsOf(file).games.get('nassau' as GameId)
    const parts = result?.kind === 'parts' ? result.parts : []
    const told = parts.map(({ shares }) => shares?.map(({ numerator, denominator }) => numerator / denominator))
    const [front, back, overall] = told
    expect(parts.map(({ name }) => name)).toEqual(['front', 'back', 'overall'])
    expect(front).toEqual([0, 1])
    expect(back).toEqual([0, 0])
    expect(overall).toEqual(front)
  })

  it('comes back from a plain file as it was written', () => {
    const file = plainWith(games({ ...match, ...to9 }, { ...points, ...from10 }))
    const [again, other] = plainOf(outingOfPlain(file))?.games ?? []
    expect([again, other]).toMatchObject([to9, from10])
    expect(again).not.toHaveProperty('from')
  })

  it('is told with its first and last hole', () => {
    const told = gameIn(settledWith(games({ ...match, ...to9 }, points)), 'match', 'match')
    expect(told.over).toEqual({ from: null, to: { hole: 9, lap: 1 } })
    expect(gameIn(settledWith(), 'match', 'match').over).toBeNull()
  })

  it('names the hole that the course lacks', () => {
    expect(
      faultsOfPlain(
        plainWith({
          length: 9,
          course: { ...autumnDay.course, holes: autumnDay.course.holes.slice(0, 9) },
          games: [{ ...match, ...from10 }, points],
        }),
      ).map(({ path }) => path),
    ).toContain('games[0].from[0]')
  })
})
