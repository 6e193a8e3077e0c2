import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { must } from '#core/values/assert.ts'
import { isRecord } from '#scripts/check-values/answer.ts'
import { type CheckValue, parseCheckFile } from '#scripts/check-values/check-value.ts'
import { runCheckValues } from '#scripts/check-values/run.ts'
import { publishedCounts } from './published-counts.ts'
import { publisherOf } from './publishers.ts'

interface PublishedValue extends CheckValue {
  readonly source: string
  readonly rule: string
  readonly edition: string
  readonly note: string
}

const root = fileURLToPath(new URL('../..', import.meta.url))

function readPublishedValues(): PublishedValue[] {
  const parsed = parseCheckFile(readFileSync(join(root, 'tests/reference/standards-vectors.json'), 'utf8'))
  if (!parsed.ok) throw new Error(`${parsed.error.path}: ${parsed.error.code}`)
  const rows: unknown = JSON.parse(readFileSync(join(root, 'tests/reference/standards-vectors.json'), 'utf8'))
  return (rows as Omit<PublishedValue, keyof CheckValue>[]).map((row, at) => ({
    ...row,
    ...must(parsed.value[at], 'one check value a row'),
  }))
}

const values = readPublishedValues()
const ofOp = (op: string): PublishedValue[] => values.filter(value => value.op === op)

describe.each(Object.entries(publishedCounts))('published values of %s', (op, count) => {
  it(`are ${count}`, () => {
    expect(ofOp(op)).toHaveLength(count)
  })

  it.each(ofOp(op).map(value => ({ ...value, publisher: publisherOf(value.source) })))(
    '$id: $rule, $publisher, $edition',
    value => {
      expect(value.publisher).not.toBeNull()
      expect(runCheckValues([value])).toEqual({ ok: true, value: { passed: 1, failed: [], unsupported: [] } })
    },
  )
})

describe('the whole file of published values', () => {
  it('passes, every value of it, and nothing is unsupported', () => {
    expect(values).toHaveLength(415)
    expect(Object.keys(publishedCounts).flatMap(ofOp)).toHaveLength(415)
    expect(runCheckValues(values)).toEqual({ ok: true, value: { passed: 415, failed: [], unsupported: [] } })
  })

  it('cannot help core: the answers are the same when every expectation is nonsense', () => {
    const nonsense = values.map(value => ({ ...value, expected: { nonsense: 'nonsense' } }))
    const report = runCheckValues(nonsense)
    if (!report.ok) throw new Error(report.error.path)
    const gotById = new Map(report.value.failed.map(({ id, got }) => [id, got]))
    for (const value of values) {
      expect(gotById.get(value.id), value.id).toMatchObject(value.expected)
    }
  })

  it('is tested for real: each expected figure, made wrong, is reported', () => {
    let planted = 0
    for (const value of values) {
      for (const wrong of wrongVersionsOf(value.expected)) {
        const report = runCheckValues([{ ...value, expected: wrong as Record<string, unknown> }])
        if (!report.ok) throw new Error(report.error.path)
        expect(report.value.failed, `${value.id} ${JSON.stringify(wrong)}`).toMatchObject([{ id: value.id }])
        planted += 1
      }
    }
    expect(planted).toBeGreaterThan(1500)
  })
})

describe('core', () => {
  const files = readdirSync(join(root, 'core'), { recursive: true, encoding: 'utf8' })
    .filter(file => file.endsWith('.ts'))
    .map(file => ({ file, text: readFileSync(join(root, 'core', file), 'utf8') }))

  it('contains no id of a published value', () => {
    const isNamedIn = (text: string) => (id: string) => new RegExp(`\\b${id}\\b`).test(text)
    const found = files.flatMap(({ file, text }) =>
      values
        .map(value => value.id)
        .filter(isNamedIn(text))
        .map(id => `${file}: ${id}`),
    )
    expect(files.length).toBeGreaterThan(5)
    expect(found).toEqual([])
  })

  it('contains no expected sentence and no note of a published value', () => {
    const results = values.flatMap(value => textsOf(value.expected)).filter(text => text.includes(' '))
    const notes = values.map(value => value.note).filter(note => note.split(' ').length > 4)
    expect(new Set(results).size).toBeGreaterThan(5)
    const isWritten = (text: string) => (sentence: string) =>
      ["'", '"', '`'].some(quote => withoutComments(text).includes(quote + sentence + quote))
    const found = files.flatMap(({ file, text }) =>
      [...results.filter(isWritten(text)), ...notes.filter(note => text.includes(note))].map(
        sentence => `${file}: ${sentence}`,
      ),
    )
    expect(found).toEqual([])
  })
})

/** An example in a comment answers nothing. */
const withoutComments = (text: string): string => text.replaceAll(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '')

function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : []
}

/** One unit of the last place that the file prints: 1 for a whole number, else four places or more. */
function lastPlaceOf(value: number): number {
  if (Number.isInteger(value)) return 1
  return 10 ** -Math.max(4, String(value).split('.')[1]?.length ?? 0)
}

/** The value once for each figure in it, with that figure made wrong. */
function wrongVersionsOf(value: unknown): unknown[] {
  if (Array.isArray(value))
    return value.flatMap((each, at) => wrongVersionsOf(each).map(wrong => value.with(at, wrong)))
  if (isRecord(value)) {
    return Object.entries(value).flatMap(([key, each]) =>
      wrongVersionsOf(each).map(wrong => ({ ...value, [key]: wrong })),
    )
  }
  if (typeof value === 'number') return [value + lastPlaceOf(value)]
  if (typeof value === 'boolean') return [!value]
  return [value === null ? 0 : `not ${value}`]
}
