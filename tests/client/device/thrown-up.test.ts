import { describe, expect, test } from 'vitest'
import { thrownUp } from '#client/device/random-ids.ts'

describe('balls thrown up', () => {
  test('come down all of them, once', () => {
    const balls = Array.from({ length: 16 }, (_, place) => place)
    expect(thrownUp(balls).toSorted((a, b) => a - b)).toEqual(balls)
    expect(thrownUp([])).toEqual([])
  })

  test('come down in every order', () => {
    const orders = new Set(Array.from({ length: 600 }, () => thrownUp(['a', 'b', 'c']).join('')))
    // One of six orders stays away in 600 throws once in some 10^47.
    expect([...orders].sort()).toEqual(['abc', 'acb', 'bac', 'bca', 'cab', 'cba'])
  })
})
