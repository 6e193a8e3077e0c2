import { describe, expect, it } from 'vitest'
import type { Absence, Happenings } from '#core/formats/happenings.ts'
import { ball, hole } from '#tests/kit/played-game.ts'
import { pars } from '#tests/kit/total-games.ts'
import { lineOf, totalAfter } from './total-after.ts'

const absence = (id: string, more: Partial<Absence>): Partial<Happenings> => ({
  absences: new Map([
    [ball(id), { ball: ball(id), joinedAt: null, leftAt: null, isWithdrawn: false, reason: null, ...more }],
  ]),
})

const outOfPlay = (counts: 'nothing' | 'net-par', ...holes: number[]): Partial<Happenings> => ({
  holesOut: new Map(holes.map(each => [hole(each), { counts, reason: 'flood' }])),
})

describe('a ball that leaves', () => {
  const left = { leftAt: hole(10), isWithdrawn: true, reason: 'back' }

  it.each(['stroke-play-gross', 'stroke-play-net', 'maximum-score-net'] as const)('has no return in %s', format => {
    const line = lineOf(totalAfter(format, { A: pars.slice(0, 9), B: pars }, absence('A', left)), 'A')
    expect(line).toMatchObject({
      total: null,
      place: null,
      isNoReturn: true,
      withdrawn: { reason: 'back' },
      through: 9,
    })
  })

  it('keeps its points, and earns none for the holes missed, whatever was written there', () => {
    const line = lineOf(totalAfter('stableford', { A: pars.slice(0, 10), B: pars }, absence('A', left)), 'A')
    expect(line).toMatchObject({
      total: 18,
      place: 2,
      isNoReturn: false,
      isFinished: true,
      withdrawn: { reason: 'back' },
    })
    expect(line.notes.get(hole(10))).toEqual([{ code: 'absent', ball: 'A' }])
    expect(line.notes.size).toBe(9)
  })

  it('loses the holes missed in par/bogey and counts their cap in maximum score where it is not withdrawn', () => {
    const early = absence('A', { leftAt: hole(17) })
    expect(lineOf(totalAfter('par-bogey', { A: pars.slice(0, 16) }, early), 'A').total).toBe(-2)
    expect(lineOf(totalAfter('maximum-score-gross', { A: pars.slice(0, 16) }, early), 'A')).toMatchObject({
      total: 76,
      isNoReturn: false,
      isFinished: true,
    })
  })

  it('leaves in the order of play, not by numbers', () => {
    const round = [...pars.keys()].map(place => ({ hole: ((place + 9) % 18) + 1, lap: 1 }))
    const scores = { A: round.map(({ hole: number }) => pars[number - 1] ?? 4) }
    expect(lineOf(totalAfter('stableford', scores, absence('A', { leftAt: hole(1) }), { round }), 'A').total).toBe(18)
    expect(lineOf(totalAfter('stableford', scores, absence('A', { joinedAt: hole(1) }), { round }), 'A').total).toBe(18)
  })

  it('of a team leaves the others to it', () => {
    const scores = { A: pars, B: pars.slice(0, 9), C: pars }
    const more = { sides: [['A', 'B', 'C']], methods: { allowancePercent: 100 } }
    const line = lineOf(totalAfter('best-balls-stableford', scores, absence('B', left), more), 'A')
    expect(line).toMatchObject({ total: 72, withdrawn: null, isFinished: true })
  })

  it('that never came has no place', () => {
    expect(lineOf(totalAfter('stableford', { A: [], B: pars }, absence('A', {})), 'A')).toMatchObject({
      total: 0,
      place: null,
    })
  })
})

describe('a hole out of play', () => {
  it('that counts nothing is left out for everybody, whoever had played it', () => {
    const result = totalAfter(
      'stroke-play-net',
      { A: pars, B: [...pars.slice(0, 8), null, ...pars.slice(9)] },
      outOfPlay('nothing', 9),
    )
    expect(
      result.lines.map(({ total, overPar, place, isFinished, through }) => [
        total,
        overPar,
        place,
        isFinished,
        through,
      ]),
    ).toEqual([
      [68, 0, 1, true, 17],
      [68, 0, 1, true, 17],
    ])
    expect(lineOf(result, 'A').byHole.get(hole(9))).toEqual({ kind: 'out' })
    expect(lineOf(result, 'B').notes.get(hole(9))).toEqual([{ code: 'out-of-play', ball: null }])
  })

  it.each([
    ['stroke-play-net', 18, 55],
    ['stroke-play-gross', 18, 72],
    ['maximum-score-net', 18, 55],
    ['stableford', 18, 53],
    ['par-bogey', 18, 17],
  ] as const)('that counts net par gives par off the handicap in %s', (format, handicap, total) => {
    const scores = { A: [...pars.slice(0, 4), 9, ...pars.slice(5)] }
    const more = { handicaps: { A: handicap }, methods: { allowancePercent: 100 } }
    const line = lineOf(totalAfter(format, scores, outOfPlay('net-par', 5), more), 'A')
    expect(line.total).toBe(total)
    expect(line.notes.get(hole(5))).toEqual([{ code: 'net-par', ball: 'A' }])
  })

  it('does not give net par to a ball that was not there', () => {
    const happenings = { ...outOfPlay('net-par', 1), ...absence('A', { joinedAt: hole(2) }) }
    expect(lineOf(totalAfter('stableford', { A: pars }, happenings), 'A').total).toBe(34)
  })
})
