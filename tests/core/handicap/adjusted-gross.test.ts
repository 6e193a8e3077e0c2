import { describe, expect, it } from 'vitest'
import { adjustedGross, type RatedHole } from '#core/handicap/adjusted-gross.ts'

/** Eighteen par fours whose stroke index is the number of the hole. */
const holes = (scores: Readonly<Record<number, RatedHole['score']>>): RatedHole[] =>
  Array.from({ length: 18 }, (_, at) => ({ par: 4, strokeIndex: at + 1, score: scores[at + 1] ?? 5 }))

describe('adjusted gross score (Rules of Handicapping 3.1 to 3.3, R&A, 2020 and 2024)', () => {
  it('holds each hole at net double bogey', () => {
    const { total, maxPerHole } = adjustedGross(holes({ 1: 9, 18: 7 }), 1, 'net-par')
    expect(maxPerHole).toEqual([7, ...Array.from({ length: 17 }, () => 6)])
    expect(total).toBe(16 * 5 + 7 + 6)
  })

  it('holds each hole at par and five before there is an Index', () => {
    expect(adjustedGross(holes({ 1: 12 }), null, 'net-par').total).toBe(17 * 5 + 9)
  })

  it('counts the most allowed for a hole started without a likely score', () => {
    expect(adjustedGross(holes({ 1: 'started', 2: 'started' }), 1, 'net-par').total).toBe(16 * 5 + 7 + 6)
  })

  it('counts net par for a hole not played (2020, and 2024 where an association allows it)', () => {
    expect(adjustedGross(holes({ 1: 'not-played', 2: 'not-played' }), 1, 'net-par').total).toBe(16 * 5 + 5 + 4)
  })

  it('leaves out a hole not played, for an expected score to take its place (2024)', () => {
    const { total, holesLeftOut, counted } = adjustedGross(holes({ 1: 'not-played' }), 1, 'left-out')
    expect([total, holesLeftOut, counted[0]]).toEqual([17 * 5, 1, null])
  })
})
