import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { root } from '#scripts/setup/places.mjs'
import { readPlaywright, readVitest } from '#scripts/test/reports.mjs'

let folder: string
let file: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'six-threes-'))
  file = join(folder, 'report.json')
})
afterEach(() => rmSync(folder, { recursive: true }))

const write = (report: unknown): void => writeFileSync(file, JSON.stringify(report))

test('passed and failed tests are counted, and a file that could not be loaded is one failure', () => {
  const broken = { status: 'failed', assertionResults: [] }
  const failed = { status: 'failed', assertionResults: [{}] }
  write({ numPassedTests: 7, numFailedTests: 2, testResults: [broken, failed] })
  expect(readVitest(file, 1)).toMatchObject({ passed: 7, failed: 3 })
})

test('browser tests that passed only at a second try count as failed', () => {
  write({ stats: { expected: 4, unexpected: 1, flaky: 1 } })
  expect(readPlaywright(file, 1)).toMatchObject({ passed: 4, failed: 2 })
})

test('a run that ends badly with no failed test, or with no report, is one failure', () => {
  write({ numPassedTests: 7, numFailedTests: 0, testResults: [] })
  expect(readVitest(file, 1)).toMatchObject({ passed: 7, failed: 1 })
  expect(readVitest(file, 1)).toMatchObject({ passed: 0, failed: 1 })
  expect(readPlaywright(file, 1)).toMatchObject({ passed: 0, failed: 1 })
})

test('a report is read once, so that an old one never speaks for a new run', () => {
  write({ stats: { expected: 4, unexpected: 0, flaky: 0 } })
  expect(readPlaywright(file, 0)).toMatchObject({ passed: 4, failed: 0 })
  expect(readPlaywright(file, 0)).toMatchObject({ passed: 0, failed: 0 })
})

test('what ran is read by file, groups and title, and what was left out has not passed', () => {
  const assertionResults = [
    { ancestorTitles: ['a server'], title: 'keeps it', status: 'passed' },
    { ancestorTitles: [], title: 'is left out', status: 'skipped' },
  ]
  write({ testResults: [{ name: join(root, 'tests/a.test.ts'), status: 'passed', assertionResults }] })
  expect(readVitest(file, 0).ran).toEqual([
    { file: 'tests/a.test.ts', titles: ['a server', 'keeps it'], hasPassed: true },
    { file: 'tests/a.test.ts', titles: ['is left out'], hasPassed: false },
  ])
  const spec = (title: string, status: string) => ({ title, file: 'b.spec.ts', tests: [{ status }] })
  const groups = [{ title: 'a page', specs: [spec('is left out', 'skipped')] }]
  const suites = [{ title: 'b.spec.ts', specs: [spec('opens', 'expected')], suites: groups }]
  write({ config: { rootDir: join(root, 'tests/browser') }, stats: {}, suites })
  expect(readPlaywright(file, 0).ran).toEqual([
    { file: 'tests/browser/b.spec.ts', titles: ['opens'], hasPassed: true },
    { file: 'tests/browser/b.spec.ts', titles: ['a page', 'is left out'], hasPassed: false },
  ])
})
