import { describe, expect, test } from 'vitest'
import { groupSizes, groupsThrown } from '#core/outing/draw/group-sizes.ts'

describe('the groups of a field', () => {
  // Common practice, the case of a society day of 22 and its neighbours; one, two and five are the exceptions.
  test.each([
    [22, [3, 3, 4, 4, 4, 4]],
    [13, [3, 3, 3, 4]],
    [17, [3, 3, 3, 4, 4]],
    [9, [3, 3, 3]],
    [16, [4, 4, 4, 4]],
    [6, [3, 3]],
    [5, [3, 2]],
    [2, [2]],
    [1, [1]],
    [0, []],
  ])('of %i are three-balls first, then four-balls: %j', (balls, sizes) => {
    expect(groupSizes(balls)).toEqual(sizes)
  })

  test('hold everybody once, in the order thrown', () => {
    for (let n = 0; n <= 150; n++) {
      const balls = Array.from({ length: n }, (_, place) => place)
      expect(groupsThrown(balls).flat()).toEqual(balls)
      expect(Math.max(0, ...groupsThrown(balls).map(({ length }) => length))).toBeLessThanOrEqual(4)
    }
  })
})
