import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { PartsPage } from '#client/dev/PartsPage.tsx'

const page = renderToStaticMarkup(createElement(PartsPage))
const countOf = (text: string): number => page.split(text).length - 1

describe('the page of every part', () => {
  test('shows each mark of the strip by day and by night', () => {
    expect(countOf('data-look="day"')).toBe(1)
    expect(countOf('data-look="night"')).toBe(1)
    for (const mark of ['solid', 'under', 'cut', 'number', 'hatch', 'out', 'gap', 'line']) {
      expect(countOf(`"mark-${mark}"`), mark).toBeGreaterThanOrEqual(2)
    }
  })

  test('shows keys at rest, chosen and as one of two scores', () => {
    expect(countOf('aria-pressed="true" aria-label="Alder 6"')).toBeGreaterThanOrEqual(2)
    expect(countOf('class="key level candidate"')).toBe(2)
    expect(page).toContain('two scores:')
  })

  test('is in no build but that of development', () => {
    const dist = fileURLToPath(new URL('../../../dist/client/', import.meta.url))
    const files = readdirSync(dist, { recursive: true, encoding: 'utf8' })
    expect(files).toContain('index.html')
    expect(files.filter(file => file.endsWith('.html'))).toEqual(['index.html'])
    const scripts = files.filter(file => file.endsWith('.js'))
    expect(scripts.filter(file => readFileSync(`${dist}${file}`, 'utf8').includes('Button at rest'))).toEqual([])
  })
})
