import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { defaultGameMethods } from '#core/outing/game-settings.ts'
import { ball, hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'
import { quillmoor } from '#tests/kit/quillmoor.ts'

const pars: readonly number[] = quillmoor.pars
const four = [['A', 'B', 'C', 'D']]

const lineOf = (game: PlayedGame) => {
  const [line] = resultOf('total', { ...game, methods: { allowancePercent: 100, ...game.methods } }).lines
  if (line === undefined) throw new Error('no line')
  return line
}

const valuesOf = (line: ReturnType<typeof lineOf>, holes: number) =>
  [...line.byHole.values()].slice(0, holes).map(each => (each.kind === 'value' ? each.value : each.kind))

/** Over par on the first holes. */
const over = (...each: (number | 'picked-up' | 'not-played' | null)[]): Written[] =>
  each.map((more, place) => (typeof more === 'number' ? (pars[place] ?? 4) + more : more))

// Best n of four each hole, 1-2-3 by turns: common practice; allowances Rules of Handicapping 2024, Appendix C.
describe('the best balls of a team', () => {
  it('add up the best two nets of four', () => {
    const line = lineOf({
      format: 'best-balls-stroke-play',
      sides: four,
      handicaps: { D: 18 },
      scores: { A: over(0, 2), B: over(1, 1), C: over(2, 'picked-up'), D: over(1, 3) },
    })
    // 4 and (A, B or D net) 4; then 6 and B's or D's 6, 7.
    expect(valuesOf(line, 2)).toEqual([8, 13])
    expect(line.byHole.get(hole(1))).toMatchObject({ balls: ['A', 'D'], level: 8 })
    expect(line).toMatchObject({ total: 21, overPar: 3, through: 2 })
  })

  it('add up the best two scores of points', () => {
    const scores = { A: over(0, -1), B: over(-1, 0), C: over(3, 'picked-up'), D: over(0, 1) }
    const line = lineOf({ format: 'best-balls-stableford', sides: four, scores })
    expect(valuesOf(line, 2)).toEqual([5, 5])
    expect(line.byHole.get(hole(1))).toMatchObject({ balls: ['A', 'B', 'D'] })
  })

  it('have a value as soon as enough are holed, and not before', () => {
    const scores = { A: over(0, 0), B: over(0), C: over('picked-up', 'picked-up'), D: [] }
    expect(valuesOf(lineOf({ format: 'best-balls-stableford', sides: four, scores }), 3)).toEqual([4, 'open', 'open'])
  })

  it('give no return in strokes with too few holed, and the points there are', () => {
    const scores = { A: over(0), B: over('picked-up'), C: over('picked-up'), D: over('not-played') }
    const strokes = lineOf({ format: 'best-balls-stroke-play', sides: four, scores })
    expect([valuesOf(strokes, 1), strokes.isNoReturn]).toEqual([['none'], true])
    const points = lineOf({ format: 'best-balls-stableford', sides: four, scores })
    expect([valuesOf(points, 1), points.isNoReturn]).toEqual([[2], false])
    expect(points.notes.get(hole(1))?.map(({ code }) => code)).toEqual([
      'picked-up',
      'picked-up',
      'not-played',
      'short',
    ])
  })

  it('of three take the best of the balls there are', () => {
    const scores = { A: over(0), B: over(1), C: over(2) }
    const sides = [['A', 'B', 'C']]
    expect(valuesOf(lineOf({ format: 'best-balls-stableford', sides, scores }), 1)).toEqual([3])
    const all = { countingBalls: [4] }
    expect(valuesOf(lineOf({ format: 'best-balls-stableford', sides, scores, methods: all }), 1)).toEqual([3])
    expect(lineOf({ format: 'best-balls-stroke-play', sides, scores, methods: all }).isNoReturn).toBe(true)
  })

  // Practice case TM-01: the player who withdrew after eleven holes counts on those.
  it('go on with three where one of four withdraws', () => {
    const points: Readonly<Record<string, readonly number[]>> = {
      A: [2, 2, 2, 2, 2, 2, 1, 1, 2, 2, 3, 2, 1, 0, 2, 2, 1, 0],
      B: [2, 3, 3, 0, 2, 2, 2, 3, 3, 2, 3, 1, 2, 0, 2, 0, 0, 0],
      C: [1, 1, 2, 0, 2, 2, 2, 2, 1, 2, 1, 3, 2, 2, 0, 3, 0, 2],
      D: [3, 2, 2, 2, 0, 3, 2, 2, 1, 2, 2],
    }
    const gone = { ball: ball('D'), joinedAt: null, leftAt: hole(12), isWithdrawn: true, reason: null }
    const line = lineOf({
      format: 'best-balls-stableford',
      sides: four,
      scores: Object.fromEntries(
        Object.entries(points).map(([id, each]) => [id, each.map((point, place) => (pars[place] ?? 4) + 2 - point)]),
      ),
      happenings: { absences: new Map([[ball('D'), gone]]) },
    })
    expect(valuesOf(line, 18)).toEqual([5, 5, 5, 4, 4, 5, 4, 5, 5, 4, 6, 5, 4, 2, 4, 5, 1, 2])
    expect(line).toMatchObject({ total: 75, isFinished: true, withdrawn: null })
  })

  it('waltz one, two, three in the order of play, and again', () => {
    const scores = Object.fromEntries(['A', 'B', 'C', 'D'].map(id => [id, pars]))
    const line = lineOf({ format: 'waltz', sides: four, scores })
    expect(valuesOf(line, 6)).toEqual([2, 4, 6, 2, 4, 6])
    expect(line.total).toBe(72)
    const round = roundFrom(12, 18)
    const shotgun = lineOf({ format: 'waltz', sides: four, round, scores: { A: [3], B: [3], C: [3], D: [3] } })
    expect([...shotgun.byHole.keys()][0]).toBe(hole(12))
    expect(valuesOf(shotgun, 1)).toEqual([2])
  })

  it('leave open what two scores would change, and nothing else', () => {
    const line = lineOf({
      format: 'best-balls-stroke-play',
      sides: four,
      scores: {
        A: [
          [4, 7],
          [5, 6],
        ],
        B: over(0, 0),
        C: over(0, 2),
        D: over(0, 3),
      },
    })
    expect(valuesOf(line, 2)).toEqual([8, 'two'])
    expect(line.byHole.get(hole(2))).toEqual({ kind: 'two', values: [10, 11] })
  })

  it.each([
    [[1], 75],
    [[2], 85],
    [[3], 100],
    [[4], 100],
    [[1, 2, 3], 85],
  ])('counting %j, propose %i per cent', (countingBalls, percent) => {
    expect(defaultGameMethods('best-balls-stableford', { countingBalls }).allowancePercent).toBe(percent)
  })
})

describe('the total of two', () => {
  const two = [['A', 'B']]

  it('needs both in strokes', () => {
    const scores = { A: over(0, 0, 1), B: over(1, 'picked-up') }
    const line = lineOf({ format: 'total-of-two-stroke-play', sides: two, scores })
    expect(valuesOf(line, 3)).toEqual([9, 'none', 'open'])
    expect(line.isNoReturn).toBe(true)
  })

  it('adds the points that there are', () => {
    const scores = { A: over(0, 0, 1), B: over(1, 'picked-up') }
    const line = lineOf({ format: 'total-of-two-stableford', sides: two, scores })
    expect(valuesOf(line, 3)).toEqual([3, 2, 'open'])
    expect(line.total).toBe(5)
  })
})
