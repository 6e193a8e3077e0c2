import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { checkValuesCommand } from '#scripts/check-values/command.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'check-values-'))
afterAll(() => rmSync(folder, { recursive: true }))

const right = {
  id: 'one',
  input: { op: 'stableford_points', par: 4, strokes_received: 1, gross: 5 },
  expected: { points: 2 },
}
const wrong = { ...right, id: 'two', expected: { points: 3 } }
const unknown = { ...right, id: 'three', input: { op: 'constructor' } }

function fileOf(content: unknown): string {
  const file = join(folder, 'values.json')
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content))
  return file
}

describe('check-values', () => {
  it('reports what passed and what it cannot work out', () => {
    const { status, stdout, stderr } = checkValuesCommand([fileOf([right, unknown])])
    expect(JSON.parse(stdout)).toEqual({ passed: 1, failed: [], unsupported: ['three'] })
    expect([status, stderr]).toEqual([0, ''])
  })

  it('reports what failed, with both figures', () => {
    const { status, stdout } = checkValuesCommand([fileOf([right, wrong])])
    expect(JSON.parse(stdout)).toEqual({
      passed: 1,
      failed: [{ id: 'two', expected: { points: 3 }, got: { points: 2 } }],
      unsupported: [],
    })
    expect(status).toBe(1)
  })

  const badFiles: readonly (readonly [string, unknown, string])[] = [
    ['no JSON', '[{', 'this is not JSON'],
    ['no list', { values: [] }, 'a list of check values must stand here'],
    ['no object', [right, 7], '[1]: an object must stand here'],
    ['no id', [{ ...right, id: 7 }], '[0].id: a text must stand here'],
    ['an id twice', [right, right], '[1].id: another check value has the same id'],
    ['no input', [{ ...right, input: null }], '[0].input: an object must stand here'],
    ['no calculation', [{ ...right, input: {} }], '[0].input.op: a text must stand here'],
    ['nothing expected', [{ ...right, expected: {} }], '[0].expected: an object must stand here'],
    ['a missing figure', [{ ...right, input: { op: 'match_state', holes: [] } }], '[0].input.scheduled: this is not'],
    ['a wrong figure', [{ ...right, input: { ...right.input, gross: 4.5 } }], '[0].input.gross: this is not'],
    [
      'a hole of no code',
      [{ ...right, input: { op: 'match_state', holes: [1, 2], scheduled: 18 } }],
      '[0].input.holes[1]:',
    ],
    [
      'a plus sign, which turns a handicap round',
      [{ ...right, input: { op: 'match_strokes', course_handicaps_unrounded: ['+2', '10'], allowance_pct: 100 } }],
      '[0].input.course_handicaps_unrounded[0]: this is not',
    ],
    [
      'an Index in hundredths',
      [
        {
          ...right,
          input: { op: 'course_handicap_18', handicap_index: 10.25, slope: 113, course_rating: 72, par: 72 },
        },
      ],
      '[0].input.handicap_index: this is not',
    ],
    [
      'a card of two lengths',
      [{ ...right, input: { op: 'par_bogey_round', par: [4], stroke_index: [1, 2], playing_handicap: 0, gross: [4] } }],
      '[0].input: this is not',
    ],
  ]

  it.each(badFiles)('ends with status 2 and one line on %s', (_, content, line) => {
    const outcome = checkValuesCommand([fileOf(content)])
    expect([outcome.status, outcome.stdout]).toEqual([2, ''])
    expect(outcome.stderr).toContain(line)
    expect(outcome.stderr.trimEnd().split('\n')).toHaveLength(1)
  })

  it('ends with status 2 without a file it can read', () => {
    expect(checkValuesCommand([])).toMatchObject({ status: 2, stdout: '' })
    expect(checkValuesCommand(['one.json', 'two.json'])).toMatchObject({ status: 2, stdout: '' })
    expect(checkValuesCommand([join(folder, 'nothing.json')]).stderr).toContain('cannot be read (ENOENT)')
    expect(checkValuesCommand([folder]).status).toBe(2)
  })

  it('prints and ends likewise as a program', () => {
    const run = (file: string) =>
      spawnSync(process.execPath, ['--import', 'tsx', 'scripts/check-values.ts', file], { cwd: root, encoding: 'utf8' })
    const failed = run(fileOf([wrong]))
    expect([failed.status, JSON.parse(failed.stdout).failed.length, failed.stderr]).toEqual([1, 1, ''])
    const bad = run(fileOf('{}'))
    expect([bad.status, bad.stdout]).toEqual([2, ''])
    expect(bad.stderr).toMatch(/^check-values: .+\n$/)
    expect(run('tests/reference/standards-vectors.json').status).toBe(0)
  })
})
