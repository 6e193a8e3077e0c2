import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from '#scripts/setup/places.mjs'
import { missingTests, parseFailureRows, rowKinds } from '#scripts/test/failure-rows.mjs'

const read = (path: string): string => readFileSync(join(root, path), 'utf8')
const rows = parseFailureRows(read('tests/README.md'))
const modes: readonly { readonly id: string }[] = JSON.parse(read('tests/reference/failure-modes.json'))

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)

/** A title stands in quotes right behind the bracket of its call. */
const hasTitle = (source: string, title: string): boolean =>
  new RegExp(String.raw`\(\s*(['"\`])${escaped(title)}\1`).test(source)

describe('the table of failure modes', () => {
  it('has every one that was measured, once, in their order', () => {
    expect(rows.map(({ id }) => id)).toEqual(modes.map(({ id }) => id))
    expect(rows).toHaveLength(107)
  })

  it('says of each what holds it', () => {
    const wrong = rows.filter(({ symptom, kind, by, tests }) => {
      const isHeld = kind === 'PostgreSQL' || (kind === 'test' ? tests.length > 0 : by !== '')
      return !rowKinds.includes(kind) || symptom === '' || !isHeld
    })
    expect(wrong.map(({ id }) => id)).toEqual([])
  })

  it('names tests that exist', () => {
    const gone = rows.flatMap(({ id, tests }) =>
      tests.flatMap(({ file, titles }) => {
        const source = existsSync(join(root, file)) ? read(file) : ''
        return titles.every(title => hasTitle(source, title)) ? [] : [`${id}: ${file} › ${titles.join(' › ')}`]
      }),
    )
    expect(gone).toEqual([])
  })

  it('would miss a test whose title is not there', () => {
    expect(hasTitle("it('is lost', () => {", 'is lost')).toBe(true)
    expect(hasTitle('it.each(all)(\n  `%s: is lost`', '%s: is lost')).toBe(true)
    expect(hasTitle("// it is lost, it('is lost twice'", 'is lost')).toBe(false)
  })
})

describe('a whole run', () => {
  const table = [
    '| SIO-01 | lost | test | `server/a.test.ts › a server › keeps it` and `browser/b.spec.ts › a page says %s, $name` |',
    '| SIO-02 | twice \\| thrice | ruled out | no retries |',
  ].join('\n')
  const named = parseFailureRows(table)
  const server = { file: 'tests/server/a.test.ts', titles: ['a server', 'keeps it'], hasPassed: true }
  const page = (what: string) => ({ file: 'tests/browser/b.spec.ts', titles: [`a page says ${what}`], hasPassed: true })

  it('has every test that the table names, in all its cases', () => {
    expect(named.map(({ id, tests }) => [id, tests.length])).toEqual([
      ['SIO-01', 2],
      ['SIO-02', 0],
    ])
    expect(missingTests(named, [server, page('5, (Alder)'), page('6, Birch')])).toEqual([])
  })

  it('without one of them, or with one that did not pass, says which', () => {
    expect(missingTests(named, [page('5, Alder')])).toEqual([
      'SIO-01: did not run: tests/server/a.test.ts › a server › keeps it',
    ])
    expect(missingTests(named, [server, page('5, Alder'), { ...page('6, Birch'), hasPassed: false }])).toEqual([
      'SIO-01: did not pass: tests/browser/b.spec.ts › a page says %s, $name',
    ])
    expect(missingTests(named, [{ ...server, file: 'tests/server/other.test.ts' }, page('5, Alder')])).toHaveLength(1)
    expect(missingTests(named, [{ ...server, titles: ['keeps it'] }, page('5, Alder')])).toHaveLength(1)
  })
})
