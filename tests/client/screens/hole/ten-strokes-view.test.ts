import { describe, expect, test } from 'vitest'
import { leastApart, pictureWidth, strokesDrawn, widthYd } from '#client/screens/hole/own/ten-strokes-view.ts'
import { countsText, pictureText } from '#client/words/ten-strokes-text.ts'
import { type Outcome, outcomes } from '#core/plan/aim/ground.ts'
import type { TenStrokes } from '#core/plan/picture/ten-strokes.ts'

const pictureOf = (strokes: readonly (readonly [number, Outcome])[]): TenStrokes => ({
  strokes: strokes.map(([rightYd, outcome]) => ({ rightYd, outcome })),
  counts: Object.fromEntries(
    outcomes.map(each => [each, strokes.filter(([, outcome]) => outcome === each).length]),
  ) as TenStrokes['counts'],
})

const picture = pictureOf([
  [-30, 'rough'],
  [-20, 'rough'],
  [-10, 'fairway'],
  [-5, 'fairway'],
  [0, 'fairway'],
  [0, 'fairway'],
  [5, 'fairway'],
  [15, 'rough'],
  [25, 'water'],
  [25, 'water'],
])

describe('ten shots as a picture', () => {
  test('shows how each ends by its shape, from the left', () => {
    expect(strokesDrawn(picture, 0).map(({ shape }) => shape)).toEqual([
      ...['open', 'open', 'upright', 'upright', 'upright'],
      ...['upright', 'upright', 'open', 'hanging', 'hanging'],
    ])
  })

  test('keeps every stroke on the picture and apart from the next, also where all fall together', () => {
    const together = pictureOf(Array.from({ length: 10 }, () => [12, 'green'] as const))
    for (const [each, aim] of [
      [picture, 0],
      [picture, -40],
      [together, 0],
      [together, 12],
    ] as const) {
      const places = strokesDrawn(each, aim).map(({ x }) => x)
      expect(Math.min(...places)).toBeGreaterThan(0)
      expect(Math.max(...places)).toBeLessThan(pictureWidth)
      for (const [at, x] of places.slice(1).entries()) {
        expect(x - (places[at] ?? 0)).toBeGreaterThanOrEqual(leastApart - 1e-9)
      }
    }
  })

  test('says the count in words, and what is seen to whoever does not see it', () => {
    expect(countsText(picture)).toBe('5 of 10 on the fairway, 3 in the rough, 2 in the water.')
    expect(pictureText(picture)).toBe(
      'From left to right: 2 in the rough, 5 on the fairway, 1 in the rough, 2 in the water.',
    )
    expect(widthYd(picture)).toBe(55)
  })
})
