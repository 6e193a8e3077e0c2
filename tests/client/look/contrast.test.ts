import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

/** Relative luminance and contrast. Source: WCAG 2.2, W3C 2023, definitions of both. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map(at => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

const css = readFileSync(new URL('../../../client/look/tokens.css', import.meta.url), 'utf8')

const looks = css
  .split('}')
  .map(block =>
    Object.fromEntries([...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex])),
  )
  .filter(look => 'paper' in look) as Record<string, string>[]

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
