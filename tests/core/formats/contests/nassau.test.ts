import { describe, expect, it } from 'vitest'
import { roundFrom } from '#core/card/order-of-play.ts'
import { formatMatchLine } from '#core/formats/match-text.ts'
import { toNumber } from '#core/values/fraction.ts'
import { ball, hole, type PlayedGame, resultOf, type Written } from '#tests/kit/played-game.ts'

/** Scores by who wins each hole in order of play: A, B or - for halved. */
const cards = (winners: string): Record<'alder' | 'birch', Written[]> => ({
  alder: [...winners].map(each => (each === 'A' ? 3 : 4)),
  birch: [...winners].map(each => (each === 'B' ? 3 : 4)),
})

const nassau = (winners: string, more: Partial<PlayedGame> = {}) =>
  resultOf('parts', { format: 'nassau', sides: [['alder'], ['birch']], scores: cards(winners), ...more })

const told = (result: ReturnType<typeof nassau>) =>
  result.parts.map(({ name, holes, up, shares }) => [name, holes[0], up, shares?.map(toNumber) ?? null])

// Common practice; described by a regional association's magazine, 2015, second-hand.
describe('a match in three parts', () => {
  it('is front nine, back nine and all eighteen, a point each', () => {
    const result = nassau('AA-------B--------')
    expect(told(result)).toEqual([
      ['front', hole(1), 2, [1, 0]],
      ['back', hole(10), -1, [0, 1]],
      ['overall', hole(1), 1, [1, 0]],
    ])
    expect(result.lines.map(({ side, total, place }) => [side[0], toNumber(total), place])).toEqual([
      ['alder', 2, 1],
      ['birch', 1, 2],
    ])
  })

  it('halves a level part', () => {
    expect(nassau('A--------B--------').parts.at(-1)?.shares?.map(toNumber)).toEqual([0.5, 0.5])
  })

  it('goes on after a part is decided', () => {
    const [front] = nassau('AAAAAAA').parts
    expect([front?.up, front?.match && formatMatchLine(front.match.state)]).toEqual([7, 'won 5 & 4'])
  })

  it('takes its nines in order of play', () => {
    const result = nassau('A', { round: roundFrom(14, 18) })
    const ends = result.parts.map(({ name, holes }) => [name, holes[0], holes.at(-1)])
    expect(ends).toEqual([
      ['front', hole(14), hole(4)],
      ['back', hole(5), hole(13)],
      ['overall', hole(14), hole(13)],
    ])
  })

  it('is one part over nine holes', () => {
    expect(told(nassau('A--------', { round: roundFrom(1, 9) }))).toEqual([['overall', hole(1), 1, [1, 0]]])
  })

  it('takes the better ball of two', () => {
    const result = nassau('', {
      sides: [
        ['alder', 'cedar'],
        ['birch', 'rowan'],
      ],
      scores: { alder: [4], cedar: [3], birch: [4], rowan: [4] },
    })
    expect(result.parts[0]?.match?.holes[0]).toMatchObject({ result: 1, balls: ['cedar'] })
  })
})

describe('presses', () => {
  // Common practice, as an encyclopaedia and a golf news page describe it.
  it('open by themselves two down in the newest match of the nine', () => {
    const result = nassau('AA-BB-AABA-BA-B-B-', { methods: { presses: 'at-two-down' } })
    expect(told(result).map(([name, from, up]) => [name, from, up])).toEqual([
      ['front', hole(1), 1],
      ['back', hole(10), -1],
      ['overall', hole(1), 0],
      ['press', hole(3), -1],
      ['press', hole(6), 1],
      ['press', hole(9), -1],
    ])
    const [alder, birch] = ['alder', 'birch'].map(id =>
      toNumber(result.lines.find(({ side }) => side[0] === id)?.total ?? { numerator: 0, denominator: 1 }),
    )
    expect((alder ?? 0) - (birch ?? 0)).toBe(-1)
  })

  it('open from the hole that a side asks, to the end of its nine', () => {
    const presses = [12, 3].map(from => ({ by: ball('birch'), from: hole(from) }))
    const result = nassau('AA', { methods: { presses: 'by-hand' }, happenings: { presses } })
    expect(result.parts.slice(3).map(({ number, by, holes }) => [number, by, holes[0], holes.length])).toEqual([
      [1, 'birch', hole(3), 7],
      [2, 'birch', hole(12), 7],
    ])
    expect(nassau('AA', { happenings: { presses } }).parts).toHaveLength(3)
  })

  it('do not open behind a hole that nobody knows', () => {
    const open = { alder: [3, [3, 5], 3, 3], birch: [4, 4, 4, 4] } as const
    const result = nassau('', { methods: { presses: 'at-two-down' }, scores: open })
    expect(result.parts).toHaveLength(3)
    expect(result.unsettled).toEqual([hole(2)])
  })
})

describe('what happens beside the scores', () => {
  it('a match given up ends the parts that are open', () => {
    const result = nassau('AA-------', { happenings: { matchConcessions: [{ by: ball('alder'), to: null }] } })
    expect(result.parts.map(({ name, match }) => [name, match?.decidedBy, match?.state.winner])).toEqual([
      ['front', 'play', 'A'],
      ['back', 'conceded', 'B'],
      ['overall', 'conceded', 'B'],
    ])
  })

  it('a side that leaves at the turn keeps the front nine', () => {
    const absence = { ball: ball('alder'), joinedAt: null, leftAt: hole(10), isWithdrawn: false, reason: null }
    const result = nassau('A--------', { happenings: { absences: new Map([[ball('alder'), absence]]) } })
    expect(result.parts.map(({ match }) => match?.state.winner)).toEqual(['A', 'B', 'B'])
  })
})
