import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type MatchHole, matchHole } from '#core/formats/hole-by-nets.ts'
import { formatMatchResult, matchStateOf } from '#core/formats/match-state.ts'

const knownHole = fc.constantFrom<MatchHole>(1, 0, -1)
const anyHole = fc.constantFrom<MatchHole>(1, 0, -1, null)
const halved = (holes: number): MatchHole[] => Array.from({ length: holes }, () => 0)

describe('a hole of a match (Rules of Golf 3.2, R&A and USGA, 2019 and 2023)', () => {
  it('goes to the lower net score', () => {
    expect(matchHole(3, 4)).toBe(1)
    expect(matchHole(4, 3)).toBe(-1)
    expect(matchHole(4, 4)).toBe(0)
  })

  it('is lost by a ball picked up, and tied when nobody holed out (23.2a)', () => {
    expect(matchHole('picked-up', 9)).toBe(-1)
    expect(matchHole(9, 'picked-up')).toBe(1)
    expect(matchHole('picked-up', 'picked-up')).toBe(0)
  })

  it('is not known while one side is not', () => {
    expect(matchHole(null, 4)).toBeNull()
    expect(matchHole('picked-up', null)).toBeNull()
    expect(matchHole(null, null)).toBeNull()
  })
})

describe('the state of a match (Rules of Golf 3.2a, R&A and USGA, 2019 and 2023)', () => {
  it('before the first hole is level with all to play', () => {
    expect(matchStateOf([], 18)).toEqual({
      leader: null,
      lead: 0,
      toPlay: 18,
      holesPlayed: 0,
      gaps: 0,
      dormie: false,
      winner: null,
      result: null,
    })
  })

  it('is dormie when as many up as remain (rule 2-1 until 2019)', () => {
    expect(matchStateOf([-1, -1, ...halved(14)], 18)).toMatchObject({ leader: 'B', lead: 2, toPlay: 2, dormie: true })
  })

  it('is won when more up than remain, and later holes change nothing', () => {
    const won = matchStateOf([1, 1, 1, 1, 1], 9)
    expect(won.result).toEqual({ kind: 'won-with-holes-left', winner: 'A', by: 5, left: 4 })
    expect(matchStateOf([1, 1, 1, 1, 1, -1, -1, -1, -1], 9)).toEqual(won)
  })

  it('is won on the last hole', () => {
    const { result, winner } = matchStateOf([...halved(17), -1], 18)
    expect(winner).toBe('B')
    expect(result).toEqual({ kind: 'won-on-last-hole', winner: 'B', by: 1 })
  })

  it('is halved where the list ends with the schedule', () => {
    expect(matchStateOf(halved(9), 9)).toMatchObject({ winner: null, leader: null, result: { kind: 'halved' } })
  })

  it('stays open on extra holes until one is won', () => {
    expect(matchStateOf([...halved(18), null], 18)).toMatchObject({ result: null, holesPlayed: 18, toPlay: 0 })
    expect(matchStateOf(halved(19), 18)).toMatchObject({ result: null, holesPlayed: 19, winner: null })
    expect(matchStateOf([...halved(19), -1, 1], 18)).toMatchObject({
      holesPlayed: 20,
      winner: 'B',
      result: { kind: 'won-on-extra-hole', winner: 'B', by: 1, hole: 20 },
    })
  })

  it('does not look past an extra hole that is not known', () => {
    expect(matchStateOf([...halved(18), null, 1], 18)).toMatchObject({ result: null, holesPlayed: 18 })
  })

  it('counts a hole not known as still to play and says so', () => {
    expect(matchStateOf([1, null, 1, ...halved(15)], 18)).toMatchObject({ lead: 2, toPlay: 1, gaps: 1, winner: 'A' })
    expect(matchStateOf([1, null, 0, ...halved(15)], 18)).toMatchObject({ lead: 1, toPlay: 1, gaps: 1, dormie: true })
    expect(matchStateOf([1, 0, null, null], 18)).toMatchObject({ toPlay: 16, gaps: 0, dormie: false })
  })

  it('does not start extra holes while a scheduled hole is not known', () => {
    expect(matchStateOf([null, ...halved(17), 1], 18)).toMatchObject({ toPlay: 1, gaps: 1, result: null })
  })

  it('keeps a winner named with gaps, whatever the gaps turn out to be', () => {
    const histories = fc.array(fc.tuple(anyHole, knownHole), { minLength: 9, maxLength: 9 })
    fc.assert(
      fc.property(histories, holes => {
        const withGaps = matchStateOf(
          holes.map(([hole]) => hole),
          9,
        )
        const filled = matchStateOf(
          holes.map(([hole, filling]) => hole ?? filling),
          9,
        )
        if (withGaps.winner !== null) expect(filled.winner).toBe(withGaps.winner)
        if (withGaps.result?.kind === 'halved') expect(filled).toEqual(withGaps)
      }),
      { numRuns: 2_000 },
    )
  })

  it('is the mirror image from the other side', () => {
    const other = { A: 'B', B: 'A' } as const
    fc.assert(
      fc.property(fc.array(anyHole, { maxLength: 21 }), holes => {
        const ours = matchStateOf(holes, 18)
        const theirs = matchStateOf(
          holes.map(hole => (hole === null ? null : ((0 - hole) as MatchHole))),
          18,
        )
        expect(theirs.winner).toBe(ours.winner === null ? null : other[ours.winner])
        expect({ ...theirs, leader: null, winner: null, result: null }).toEqual({
          ...ours,
          leader: null,
          winner: null,
          result: null,
        })
      }),
    )
  })
})

describe('the notation of a result (common practice)', () => {
  it('is holes up and holes left, holes up alone, or halved', () => {
    expect(formatMatchResult({ kind: 'won-with-holes-left', winner: 'A', by: 3, left: 2 })).toBe('3 & 2')
    expect(formatMatchResult({ kind: 'won-on-last-hole', winner: 'B', by: 2 })).toBe('2 up')
    expect(formatMatchResult({ kind: 'won-on-extra-hole', winner: 'A', by: 1, hole: 20 })).toBe('1 up')
    expect(formatMatchResult({ kind: 'halved' })).toBe('halved')
  })
})
