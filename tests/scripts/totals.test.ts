import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
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
  expect(readVitest(file, 1)).toEqual({ passed: 7, failed: 3 })
})

test('browser tests that passed only at a second try count as failed', () => {
  write({ stats: { expected: 4, unexpected: 1, flaky: 1 } })
  expect(readPlaywright(file, 1)).toEqual({ passed: 4, failed: 2 })
})

test('a run that ends badly with no failed test, or with no report, is one failure', () => {
  write({ numPassedTests: 7, numFailedTests: 0, testResults: [] })
  expect(readVitest(file, 1)).toEqual({ passed: 7, failed: 1 })
  expect(readVitest(file, 1)).toEqual({ passed: 0, failed: 1 })
  expect(readPlaywright(file, 1)).toEqual({ passed: 0, failed: 1 })
})

test('a report is read once, so that an old one never speaks for a new run', () => {
  write({ stats: { expected: 4, unexpected: 0, flaky: 0 } })
  expect(readPlaywright(file, 0)).toEqual({ passed: 4, failed: 0 })
  expect(readPlaywright(file, 0)).toEqual({ passed: 0, failed: 0 })
})
