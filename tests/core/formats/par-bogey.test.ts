import { describe, expect, it } from 'vitest'
import { parBogey } from '#core/formats/par-bogey.ts'

describe('par/bogey (Rules of Golf 21.3, R&A and USGA, 2019 and 2023)', () => {
  it.each([
    [4, 0, 3, 1],
    [4, 0, 4, 0],
    [4, 1, 5, 0],
    [4, 1, 6, -1],
    [3, -1, 3, -1],
    [5, 2, null, -1],
  ])('par %d with %d strokes and %s gives %d', (par, strokes, gross, result) => {
    expect(parBogey(par, strokes, gross)).toBe(result)
  })
})
