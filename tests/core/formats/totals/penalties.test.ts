import { describe, expect, it } from 'vitest'
import type { Disqualification, Happenings, Penalty } from '#core/formats/happenings.ts'
import { ball, hole, resultOf } from '#tests/kit/played-game.ts'
import { pars } from '#tests/kit/total-games.ts'
import { lineOf, totalAfter } from './total-after.ts'

const penalty = (id: string, strokes: number, at: number | null): Penalty => ({
  ball: ball(id),
  hole: at === null ? null : hole(at),
  strokes,
  holeLost: false,
  reason: null,
})

const out = (id: string, at: number | null = null): Disqualification => ({
  ball: ball(id),
  hole: at === null ? null : hole(at),
  reason: '6.3c',
})

// Rules of Golf 2023, rules 3.3b and 21: strokes on a hole are part of its score; on the round they come off points and
// holes. Amounts off points and holes: from memory.
describe('a penalty', () => {
  it.each([
    ['stroke-play-gross', 74],
    ['maximum-score-gross', 74],
    ['stableford', 34],
    ['par-bogey', -1],
  ] as const)('of two strokes on a hole makes %s %i', (format, total) => {
    const line = lineOf(totalAfter(format, { A: pars }, { penalties: [penalty('A', 2, 3)] }), 'A')
    expect([line.total, line.penalty]).toEqual([total, 0])
    expect(line.notes.get(hole(3))?.map(({ code }) => code)).toEqual(['penalty'])
  })

  it('goes no further than the maximum', () => {
    const line = lineOf(totalAfter('maximum-score-gross', { A: pars }, { penalties: [penalty('A', 4, 3)] }), 'A')
    expect(line.total).toBe(74)
    expect(line.notes.get(hole(3))?.map(({ code }) => code)).toEqual(['penalty', 'capped'])
  })

  it.each([
    ['stroke-play-gross', 2, 74, 2],
    ['stableford', 2, 34, -2],
    ['par-bogey', 2, -1, -1],
    ['par-bogey', 4, -2, -2],
  ] as const)('on the round takes its part of %s: %i strokes', (format, strokes, total, figure) => {
    const line = lineOf(totalAfter(format, { A: pars }, { penalties: [penalty('A', strokes, null)] }), 'A')
    expect([line.total, line.penalty]).toEqual([total, figure])
  })

  it("on the round is a four-ball side's, on a hole its ball's", () => {
    const sides = { sides: [['A', 'B']], methods: { allowancePercent: 100 } }
    const scores = { A: pars, B: pars }
    const onHole = totalAfter('four-ball-stroke-play', scores, { penalties: [penalty('A', 2, 1)] }, sides)
    expect(lineOf(onHole, 'A').total).toBe(72)
    const onRound = totalAfter('four-ball-stroke-play', scores, { penalties: [penalty('B', 2, null)] }, sides)
    expect(lineOf(onRound, 'A')).toMatchObject({ total: 74, overPar: 2 })
  })

  it('is on both of two scores, and on none of a pick-up', () => {
    const two = totalAfter(
      'stroke-play-gross',
      { A: [[4, 5], 'picked-up'] },
      { penalties: [penalty('A', 1, 1), penalty('A', 1, 2)] },
    )
    expect(lineOf(two, 'A').byHole.get(hole(1))).toEqual({ kind: 'two', values: [5, 6] })
    expect(lineOf(two, 'A').byHole.get(hole(2))).toEqual({ kind: 'none' })
  })
})

describe('a disqualification', () => {
  it('from the game leaves the score in sight, last and without a place', () => {
    const result = totalAfter(
      'stroke-play-gross',
      { A: pars, B: pars.map(par => par + 1), C: ['picked-up'] },
      { disqualified: [out('A')] },
    )
    expect(result.lines.map(({ side, place, total }) => [side[0], place, total])).toEqual([
      ['B', 1, 90],
      ['C', null, null],
      ['A', null, 72],
    ])
    expect(lineOf(result, 'A').disqualified).toEqual({ reason: '6.3c' })
  })

  it('from a hole takes the ball out of it alone', () => {
    const sides = { sides: [['A', 'B']], methods: { allowancePercent: 100 } }
    const scores = { A: pars, B: pars.map(par => par + 1) }
    const line = lineOf(totalAfter('four-ball-stroke-play', scores, { disqualified: [out('A', 1)] }, sides), 'A')
    expect(line).toMatchObject({ total: 73, disqualified: null, place: 1 })
    expect(line.notes.get(hole(1))).toEqual([{ code: 'disqualified', ball: 'A' }])
    expect(lineOf(totalAfter('stroke-play-gross', { A: pars }, { disqualified: [out('A', 1)] }), 'A').isNoReturn).toBe(
      true,
    )
  })

  // Rule 23.8a from memory; rule 24.4 as read.
  it("of one ball is its four-ball side's, and no more than its own in a team", () => {
    const methods = { allowancePercent: 100 }
    const pair = totalAfter(
      'four-ball-stableford',
      { A: pars, B: pars },
      { disqualified: [out('B')] },
      { sides: [['A', 'B']], methods },
    )
    expect(lineOf(pair, 'A')).toMatchObject({ place: null, disqualified: { reason: '6.3c' } })
    const scores = { A: pars, B: pars.map(par => par - 1), C: pars }
    const team = totalAfter(
      'best-balls-stableford',
      scores,
      { disqualified: [out('B')] },
      { sides: [['A', 'B', 'C']], methods },
    )
    expect(lineOf(team, 'A')).toMatchObject({ place: 1, total: 72, disqualified: null })
    const all = ['A', 'B', 'C'].map(id => out(id))
    const gone = totalAfter(
      'best-balls-stableford',
      scores,
      { disqualified: all },
      { sides: [['A', 'B', 'C']], methods },
    )
    expect(lineOf(gone, 'A')).toMatchObject({ place: null, disqualified: { reason: '6.3c' } })
  })
})

/*
 * Source: Rules of Golf, rules 3.3b(3), 21.1b, 21.2b and 21.3b; 2019 and 2023: a blank is no return in stroke play, no points
 * in Stableford, the cap in maximum score, a lost hole in par/bogey.
 */
describe('a hole left blank on a card that is closed', () => {
  const blank = pars.map((par, place) => (place === 3 ? null : par))

  it.each([
    ['stroke-play-gross', { total: null, isNoReturn: true, place: null }],
    ['stroke-play-net', { total: null, isNoReturn: true, place: null }],
    // Par on every other hole, 68 strokes; the 4th is a par 4 and its cap of net double bogey is 6.
    ['maximum-score-gross', { total: 74, isNoReturn: false, isFinished: true }],
    ['stableford', { total: 34, isNoReturn: false, isFinished: true }],
    ['par-bogey', { total: -1, isNoReturn: false, isFinished: true }],
  ] as const)('%s', (format, expected) => {
    const line = lineOf(totalAfter(format, { A: blank }, {}, { closed: ['A'] }), 'A')
    expect(line).toMatchObject({ ...expected, through: 17 })
    expect(line.notes.get(hole(4))).toEqual([{ code: 'blank', ball: 'A' }])
  })

  it('waits to be written while the card is open', () => {
    const line = lineOf(totalAfter('stroke-play-gross', { A: blank }, {}), 'A')
    expect(line).toMatchObject({ total: 68, isNoReturn: false, isFinished: false, through: 17 })
  })
})

// Rules of Golf, rule 3.3b(4); R&A and USGA; 2019, and 2023 where Model Local Rule L-2 is in force.
describe('a handicap too low on a card', () => {
  const netOff: Partial<Happenings> = { netOff: new Map([[ball('A'), 10]]) }
  const handicaps = { A: 14, B: 14 }
  const methods = { allowancePercent: 100 }

  it.each(['stroke-play-net', 'stableford', 'maximum-score-net'] as const)('is what %s is off', format => {
    const { strokes } = totalAfter(format, { A: pars, B: pars }, netOff, { handicaps, methods })
    expect([ball('A'), ball('B')].map(id => strokes.get(id)?.strokes)).toEqual([10, 14])
    expect(strokes.get(ball('A'))?.playingHandicap).toBe(10)
  })

  it('is what the share of the handicap in a countback is taken of', () => {
    const tied = totalAfter('stroke-play-net', { A: pars, B: [...pars.slice(0, 17), (pars[17] ?? 0) + 4] }, netOff, {
      handicaps,
      methods: {
        ...methods,
        ties: { method: 'share-of-handicap', scheme: 'nine-six-three-one', holes: 'card-order', ifStillTied: 'shared' },
      },
    })
    // Both 62 net: on the last nine half of ten and half of fourteen come off.
    expect(tied.ties[0]?.working[0]?.figures).toEqual([
      { numerator: 31, denominator: 1 },
      { numerator: 33, denominator: 1 },
    ])
  })

  it('says nothing of a match', () => {
    const { strokes } = resultOf('match', {
      format: 'singles-match',
      sides: [['A'], ['B']],
      scores: {},
      handicaps,
      happenings: netOff,
    })
    expect(strokes.get(ball('B'))?.strokes).toBe(0)
  })
})
