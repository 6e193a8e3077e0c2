import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { parseDecimal, roundTo } from '#core/values/fraction.ts'
import type { Json } from '#core/values/json.ts'
import { settleText } from '#scripts/settle/settle-text.ts'
import { valueAt } from './json-path.ts'
import { practicePaths } from './practice-paths.ts'
import { practiceRulings } from './practice-rulings.ts'
import { caseOf, casesIn } from './worked-cases.ts'

const fileOf = (name: string): string => fileURLToPath(new URL(`practice/${name}.json`, import.meta.url))

const cases = casesIn<Json, Json>('practice-cases.json')

/** What is expected and is no result: a wrong way of counting, or what went in. */
const notCompared: Readonly<Record<string, string>> = {
  'HC-07.if_wrongly_read_from_18_hole_si': 'the holes of a wrong reading of the card',
  'MP-05.extra_strokes_claimed': 'the difference of two figures that go in',
  'TM-05.three_avg_ghost': "the ghost's course handicap goes in as a player's",
}

function settled(name: string): Json {
  const found = settleText(readFileSync(fileOf(name), 'utf8'))
  if (!found.ok) throw new Error(`${name}: ${JSON.stringify(found.error)}`)
  return found.value as unknown as Json
}

/** A figure in the places that the case prints; everything else as it is. */
function inPlaces(got: Json, expected: Json): Json {
  if (typeof expected !== 'number' || (typeof got !== 'string' && typeof got !== 'number')) return got
  const places = (String(expected).split('.')[1] ?? '').length
  const value = parseDecimal(String(got))
  return value === null ? got : roundTo(value, 10 ** places) / 10 ** places
}

describe('practice cases, settled', () => {
  for (const [name, paths] of Object.entries(practicePaths)) {
    const [id = ''] = name.split('/')
    const { title, decides, expected } = caseOf<Json, Json>(cases, id)
    it(`${name} ${title} (${decides})`, () => {
      const output = settled(name.replace('/', '-'))
      for (const { got, expected: path, read = (value: Json) => value } of paths) {
        const wanted = valueAt(expected, path)
        expect([path, inPlaces(read(valueAt(output, got)), wanted)]).toEqual([path, wanted])
      }
    })
  }
})

describe('practice cases, ruled', () => {
  it.each(practiceRulings)('$id $expected: $why', ({ id, expected, ruled }) => {
    const { setup, expected: all } = caseOf<Json, Json>(cases, id)
    expect(ruled(setup)).toEqual(valueAt(all, expected))
  })
})

/** `totals.A` for every value that a case expects; a list is one value. */
function leavesOf(json: Json, path: string): string[] {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return [path]
  return Object.entries(json).flatMap(([name, value]) => leavesOf(value, `${path}.${name}`))
}

describe('the cases', () => {
  it('are held against the program value by value', () => {
    const compared = new Set([
      ...Object.entries(practicePaths).flatMap(([name, paths]) =>
        paths.map(({ expected }) => `${name.split('/')[0]}.${expected}`),
      ),
      ...practiceRulings.map(({ id, expected }) => `${id}.${expected}`),
      ...Object.keys(notCompared),
    ])
    const wanted = cases.flatMap(({ id, expected }) => leavesOf(expected, id))
    expect(wanted.filter(leaf => !compared.has(leaf))).toEqual([])
    expect(Object.keys(notCompared).filter(leaf => !wanted.includes(leaf))).toEqual([])
  })

  it('and the outings are the same', () => {
    const files = readdirSync(new URL('practice/', import.meta.url)).map(file => file.replace('.json', ''))
    expect(files.sort()).toEqual(
      Object.keys(practicePaths)
        .map(name => name.replace('/', '-'))
        .sort(),
    )
  })

  it('come out of the command as out of its code', () => {
    const root = fileURLToPath(new URL('../../', import.meta.url))
    const args = ['--import', 'tsx', 'scripts/settle.ts', fileOf('MP-22')]
    expect(JSON.parse(execFileSync(process.execPath, args, { cwd: root, encoding: 'utf8' }))).toEqual(settled('MP-22'))
  })
})
