import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { contrast, contrastWith, type Deficiency, deficiencies } from '#tests/kit/colour-vision.ts'
import { looksOfTokens } from './tokens.ts'

const grounds = ['paper', 'key'] as const

describe.each(Object.keys(deficiencies) as Deficiency[])('to eyes with %s', deficiency => {
  test.each(looksOfTokens())('text reads at 7 to 1 or more, and the accent at 4.5: $paper', look => {
    const seen = (text: string, ground: string): number =>
      contrastWith(deficiency, look[text] ?? '', look[ground] ?? '')
    for (const ground of grounds) {
      for (const text of ['ink', 'grey']) expect(seen(text, ground), `${text} on ${ground}`).toBeGreaterThanOrEqual(7)
      expect(seen('accent', ground), `accent on ${ground}`).toBeGreaterThanOrEqual(4.5)
    }
    // The bar under a chosen key's number, and the chosen key's own number.
    expect(seen('accent-on-ink', 'ink')).toBeGreaterThanOrEqual(4.5)
    expect(seen('paper', 'ink')).toBeGreaterThanOrEqual(7)
  })
})

test('the accent is the colour of no text but one figure, seven times as large as the rest', () => {
  const folder = new URL('../../../client/look/', import.meta.url)
  const text = readdirSync(folder)
    .filter(file => file.endsWith('.css'))
    .map(file => readFileSync(new URL(file, folder), 'utf8'))
    .join('\n')
  const coloured = [...text.matchAll(/([^{}]+)\{[^{}]*[\s;]color: var\(--accent[a-z-]*\)/g)].map(([, name]) =>
    name?.trim(),
  )
  expect(coloured).toEqual(['.reset-title b'])
})

test('the transformation keeps grey as it is, and takes from red and green what such eyes do not see', () => {
  for (const deficiency of Object.keys(deficiencies) as Deficiency[]) {
    // Each row of a matrix adds up to one.
    expect(contrastWith(deficiency, '#000000', '#ffffff')).toBeCloseTo(21, 2)
    expect(contrastWith(deficiency, '#777777', '#ffffff')).toBeCloseTo(contrast('#777777', '#ffffff'), 2)
  }
  // A red and a green of the same luminance are one colour to eyes that see none.
  expect(contrastWith('achromatopsia', '#ff0000', '#009400')).toBeLessThan(1.02)
  // Without the long cones red is far darker than it is to others.
  expect(contrastWith('protanopia', '#ff0000', '#000000')).toBeLessThan(contrast('#ff0000', '#000000') / 1.4)
})
