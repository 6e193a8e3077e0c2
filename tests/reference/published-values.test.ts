import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { must } from '#core/values/assert.ts'
import { isRecord } from '#scripts/check-values/answer.ts'
import { type CheckValue, parseCheckFile } from '#scripts/check-values/check-value.ts'
import { runCheckValues } from '#scripts/check-values/run.ts'

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

/** Who publishes the page of a source, by its host. */
const publishers: Readonly<Record<string, string>> = {
  'www.usga.org': 'USGA',
  'usga.org': 'USGA',
  'www.randa.org': 'R&A',
  'origin-www.randa.org': 'R&A',
  'miamivalleygolf.com': 'Miami Valley Golf Association, reprinting USGA and R&A',
  'ongolfhandicaps.com': 'commentary on the guidance for Great Britain and Ireland',
  'forums.golfmonthly.com': 'quotation of the guidance for Great Britain and Ireland',
}

const publisherOf = ({ source }: PublishedValue): string => {
  const host = new URL(must(source.split(' ')[0], 'a source')).host
  return must(publishers[host], `no publisher is named for ${host}`)
}

/** How many values of each calculation there are, so that none can be lost unseen. */
const requiredOps = {
  course_handicap_18: 15,
  course_handicap_9: 6,
  playing_handicap: 11,
  allocate_strokes: 18,
  stableford_points: 13,
  match_hole: 3,
  match_state: 11,
  match_strokes: 8,
}

const alsoSupportedOps = {
  course_handicap_18_no_cr_par: 3,
  playing_handicap_9: 2,
  net_par: 2,
  stableford_round: 2,
  par_bogey: 6,
  par_bogey_round: 1,
}

const values = readPublishedValues()
const ofOp = (op: string): PublishedValue[] => values.filter(value => value.op === op)

describe.each(Object.entries(requiredOps))('published values of %s', (op, count) => {
  it(`are ${count}`, () => {
    expect(ofOp(op)).toHaveLength(count)
  })

  it.each(ofOp(op).map(value => ({ ...value, publisher: publisherOf(value) })))(
    '$id: $rule, $publisher, $edition',
    value => {
      expect(runCheckValues([value])).toEqual({ ok: true, value: { passed: 1, failed: [], unsupported: [] } })
    },
  )
})

describe('the whole file of published values', () => {
  it('passes wherever core has the calculation and names the rest', () => {
    const supported: Record<string, number> = { ...requiredOps, ...alsoSupportedOps }
    const passed = Object.values(supported).reduce((sum, count) => sum + count, 0)
    const unsupported = values.filter(value => !Object.hasOwn(supported, value.op)).map(value => value.id)
    expect(values).toHaveLength(415)
    expect(runCheckValues(values)).toEqual({ ok: true, value: { passed, failed: [], unsupported } })
  })

  it('cannot help core: the answers are the same when every expectation is nonsense', () => {
    const nonsense = values.map(value => ({ ...value, expected: { nonsense: 'nonsense' } }))
    const report = runCheckValues(nonsense)
    if (!report.ok) throw new Error(report.error.path)
    const gotById = new Map(report.value.failed.map(({ id, got }) => [id, got]))
    for (const value of Object.keys(requiredOps).flatMap(ofOp)) {
      expect(gotById.get(value.id), value.id).toMatchObject(value.expected)
    }
  })

  it('is tested for real: each expected figure of the eight calculations, made wrong, is reported', () => {
    let planted = 0
    for (const value of Object.keys(requiredOps).flatMap(ofOp)) {
      for (const wrong of wrongVersionsOf(value.expected)) {
        const report = runCheckValues([{ ...value, expected: wrong as Record<string, unknown> }])
        if (!report.ok) throw new Error(report.error.path)
        expect(report.value.failed, `${value.id} ${JSON.stringify(wrong)}`).toMatchObject([{ id: value.id }])
        planted += 1
      }
    }
    expect(planted).toBeGreaterThan(500)
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
      ["'", '"', '`'].some(quote => text.includes(quote + sentence + quote))
    const found = files.flatMap(({ file, text }) =>
      [...results.filter(isWritten(text)), ...notes.filter(note => text.includes(note))].map(
        sentence => `${file}: ${sentence}`,
      ),
    )
    expect(found).toEqual([])
  })
})

function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : []
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
  if (typeof value === 'number') return [value + (Number.isInteger(value) ? 1 : 0.000001)]
  if (typeof value === 'boolean') return [!value]
  return [value === null ? 0 : `not ${value}`]
}
