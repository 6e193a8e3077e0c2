import { describe, expect, it } from 'vitest'
import { bracketFor, firstRoundPairs } from '#core/outing/draw/bracket.ts'

describe('knock-out draw (Committee Procedures 5F, 2019 and 2023)', () => {
  it.each([
    [5, 8, 3],
    [13, 16, 3],
    [16, 16, 0],
    [2, 2, 0],
  ])('%d entries make a bracket of %d with %d byes', (entries, size, byes) => {
    expect(bracketFor(entries)).toEqual({ size, byes })
  })

  it('pairs eight as the printed chart does (from memory)', () => {
    expect(firstRoundPairs(8)).toEqual([
      [1, 8],
      [4, 5],
      [2, 7],
      [3, 6],
    ])
  })

  it.each([2, 4, 16, 64, 128])('pairs %d so that each pair adds up to one more and nobody is missing', size => {
    const pairs = firstRoundPairs(size)
    expect(new Set(pairs.map(([one, other]) => one + other))).toEqual(new Set([size + 1]))
    expect(pairs.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: size }, (_, at) => at + 1))
  })

  it('keeps the top two in opposite halves and the top four in opposite quarters', () => {
    const quarters = [1, 2, 3, 4].map(seed => Math.floor(firstRoundPairs(32).findIndex(([one]) => one === seed) / 4))
    expect(new Set(quarters).size).toBe(4)
    expect(Math.floor((quarters[0] ?? 0) / 2)).not.toBe(Math.floor((quarters[1] ?? 0) / 2))
  })

  it('stops on a size that is no power of two', () => {
    expect(() => firstRoundPairs(12)).toThrow('a power of two')
    expect(() => bracketFor(0)).toThrow('at least one entry')
  })
})
