import { describe, expect, it } from 'vitest'
import type { MatchHole } from '#core/formats/hole-by-nets.ts'
import { automaticPresses } from '#core/formats/presses.ts'

// Common practice; no body publishes it.
describe('presses that open by themselves', () => {
  it.each<readonly [readonly MatchHole[], readonly number[]]>([
    [
      [1, 1, 0, -1, -1, 0, 1, 1, -1],
      [2, 5, 8],
    ],
    [[1, -1, 1, -1, 1, -1, 1, -1, 1], []],
    [
      [-1, -1, -1, -1, 0, 0, 0, 0, 0],
      [2, 4],
    ],
    [[0, 0, 0, 0, 0, 0, 0, 1, 1], []],
    [[1, null, 1, 1, 0, 0, 0, 0, 0], []],
  ])('%j open at %j', (holes, expected) => {
    expect(automaticPresses(holes)).toEqual(expected)
  })
})
