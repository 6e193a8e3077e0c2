import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { KnownNet } from '#core/formats/known-net.ts'
import { splitPointScales, splitPoints } from '#core/formats/split-points.ts'
import { fraction, plus, toNumber, zero } from '#core/values/fraction.ts'

const anyNet = fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constant<KnownNet>('picked-up'))

describe('points split by place (common practice)', () => {
  it.each([
    [
      [4, 5, 6],
      [5, 3, 1],
    ],
    [
      [6, 4, 5],
      [1, 5, 3],
    ],
    [
      [4, 4, 6],
      [4, 4, 1],
    ],
    [
      [4, 6, 6],
      [5, 2, 2],
    ],
    [
      [5, 5, 5],
      [3, 3, 3],
    ],
    [
      [4, 'picked-up', 'picked-up'],
      [5, 2, 2],
    ],
  ] as [KnownNet[], number[]][])('nine points for %j are %j', (nets, points) => {
    expect(splitPoints(nets, 'nine-points').map(toNumber)).toEqual(points)
  })

  it.each([
    [
      [4, 5, 6],
      [4, 2, 0],
    ],
    [
      [4, 4, 6],
      [3, 3, 0],
    ],
    [
      [4, 6, 6],
      [4, 1, 1],
    ],
    [
      [5, 5, 5],
      [2, 2, 2],
    ],
  ] as [KnownNet[], number[]][])('split sixes for %j are %j', (nets, points) => {
    expect(splitPoints(nets, 'split-sixes').map(toNumber)).toEqual(points)
  })

  it.each([
    ['nine-points', 9],
    ['split-sixes', 6],
  ] as const)('%s always come to %d', (scale, total) => {
    expect(splitPointScales[scale].reduce<number>((sum, each) => sum + each, 0)).toBe(total)
    fc.assert(
      fc.property(fc.tuple(anyNet, anyNet, anyNet), nets => {
        expect(splitPoints(nets, scale).reduce(plus, zero)).toEqual(fraction(total))
      }),
    )
  })
})
