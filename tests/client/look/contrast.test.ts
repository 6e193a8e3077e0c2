import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { contrast } from '#tests/kit/colour-vision.ts'
import { looksOfTokens } from './tokens.ts'

const looks = looksOfTokens()

describe('ink on paper', () => {
  test('the day, the night that the phone prefers, and the night by the button', () => {
    expect(looks).toHaveLength(3)
    expect(looks[1]).toEqual(looks[2])
  })

  test.each(looks)('every text reads at 7 to 1 or more on paper and on keys: $paper', look => {
    for (const text of ['ink', 'grey', 'accent']) {
      for (const ground of ['paper', 'key']) {
        expect(contrast(look[text] ?? '', look[ground] ?? ''), `${text} on ${ground}`).toBeGreaterThanOrEqual(7)
      }
    }
    expect(contrast(look['accent-on-ink'] ?? '', look.ink ?? '')).toBeGreaterThanOrEqual(7)
  })

  test('what is tapped, read and drawn on the way to a score takes its colours from the tokens alone', () => {
    for (const file of ['base', 'page', 'hole', 'strip', 'reset', 'fields', 'card', 'games']) {
      const text = readFileSync(new URL(`../../../client/look/${file}.css`, import.meta.url), 'utf8')
      expect([...text.matchAll(/#[0-9a-f]{3,8}\b|\brgba?\(|\bhsla?\(|\bopacity: 0\.\d/g)].map(String), file).toEqual([])
    }
  })
})
