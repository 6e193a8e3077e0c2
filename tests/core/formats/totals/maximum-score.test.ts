import { describe, expect, it } from 'vitest'
import { gameIn, settledWith } from '#tests/kit/plain-outing.ts'
import {
  card,
  cardOf,
  lineOf,
  notesOf,
  pars,
  playersWith,
  singles,
  totalGame,
  valuesOf,
} from '#tests/kit/total-games.ts'

// Practice case ST-03 (Rules of Golf 2023, rule 21.2): playing handicap 15, the cap at net double bogey.
const gross = [5, 6, 4, 'picked-up', 5, 3, 6, 6, 5, 5, 4, 4, 7, 6, 5, 'picked-up', 5, 5] as const
const fifteen = { players: playersWith({ courseHandicap: 15 }) }

describe('maximum score', () => {
  it('counts the cap for a hole without a score, gross 93 and net 78', () => {
    const net = lineOf(totalGame('maximum-score-net', [['alder']], [cardOf('alder', gross)], {}, fifteen), 'alder')
    const whole = lineOf(totalGame('maximum-score-gross', [['alder']], [cardOf('alder', gross)], {}, fifteen), 'alder')
    expect([valuesOf(whole)[3], valuesOf(whole)[15]]).toEqual([7, 5])
    expect([whole.total, net.total]).toEqual([93, 78])
    expect(net).toMatchObject({ isFinished: true, isNoReturn: false, place: 1 })
    expect(notesOf(net)).toEqual(['4 picked-up alder', '4 capped alder', '16 picked-up alder', '16 capped alder'])
  })

  it('leaves a hole open that nobody has written, and caps one not played', () => {
    const scores = [card('alder', { 2: 'not-played' }, 3)]
    const line = lineOf(
      totalGame('maximum-score-net', singles, scores, { maximumScore: { kind: 'twice-par' } }),
      'alder',
    )
    expect(line).toMatchObject({ total: 17, overPar: 5, through: 3, isFinished: false })
    expect(line.holes[3]).toMatchObject({ kind: 'open', value: null })
  })

  it.each([
    [{ kind: 'twice-par' }, 8],
    [{ kind: 'net-double-bogey' }, 6],
    [{ kind: 'fixed', strokes: 9 }, 9],
  ])('takes the cap of the committee: %o is %i at a par four', (maximumScore, expected) => {
    const game = totalGame('maximum-score-net', singles, [card('alder', { 1: 12 })], { maximumScore })
    expect(valuesOf(lineOf(game, 'alder'))[0]).toBe(expected)
    expect(notesOf(lineOf(game, 'alder'))).toEqual(['1 capped alder'])
  })

  it('says nothing of a score at the cap', () => {
    const line = lineOf(totalGame('maximum-score-gross', singles, [card('alder', { 1: 6 })]), 'alder')
    expect([valuesOf(line)[0], notesOf(line)]).toEqual([6, []])
  })

  it('asks for handicaps in a gross game only where the cap is a net one', () => {
    const players = playersWith().map(({ handicap: _, ...player }) => player)
    const settled = (maximumScore: object) =>
      settledWith({
        players,
        games: [{ id: 'g', format: 'maximum-score-gross', sides: [['alder']], maximumScore }],
        main: undefined,
        scores: [card('alder')],
      })
    expect(lineOf(gameIn(settled({ kind: 'twice-par' }), 'g', 'total'), 'alder').total).toBe(72)
    expect(gameIn(settled({ kind: 'net-double-bogey' }), 'g', 'gap').gaps).toEqual([
      { code: 'handicap missing', ball: 'alder', setting: '' },
    ])
  })

  it('is two scores only where the cap leaves them apart', () => {
    const both = (one: number, other: number) => [
      card('alder', { 1: one }),
      { ...card('alder', { 1: other }), record: 'marker' },
    ]
    const hole = (one: number, other: number) =>
      lineOf(totalGame('maximum-score-gross', singles, both(one, other)), 'alder').holes[0]
    expect(hole(9, 11)).toMatchObject({ kind: 'value', value: 6 })
    expect(hole(5, 11)).toMatchObject({ kind: 'two', values: [5, 6] })
    expect(pars[0]).toBe(4)
  })
})
