import { readFileSync, rmSync } from 'node:fs'
import { join, relative } from 'node:path'
import { root } from '../setup/places.mjs'

/** @typedef {import('./steps.mjs').Counts} Counts */
/** @typedef {import('./failure-rows.mjs').RanTest} RanTest */

/**
 * A file that could not be loaded has no tests of its own and counts as one failure.
 * @param {string} file
 * @param {number} status of the run
 * @returns {Counts}
 */
export function readVitest(file, status) {
  const report = readReport(file)
  const results = report?.testResults ?? []
  const broken = results.filter(isBroken).length
  const counts = withStatus(report?.numPassedTests ?? 0, (report?.numFailedTests ?? 0) + broken, status)
  return { ...counts, ran: results.flatMap(ranInVitest) }
}

/**
 * @param {{ name?: string, assertionResults: readonly { ancestorTitles?: string[], title: string, status: string }[] }} result
 * @returns {RanTest[]}
 */
function ranInVitest({ name = '', assertionResults }) {
  return assertionResults.map(({ ancestorTitles = [], title, status }) => ({
    file: relative(root, name),
    titles: [...ancestorTitles, title],
    hasPassed: status === 'passed',
  }))
}

/**
 * @param {string} file
 * @param {number} status of the run
 * @returns {Counts}
 */
export function readPlaywright(file, status) {
  const report = readReport(file)
  const stats = report?.stats
  const counts = withStatus(stats?.expected ?? 0, (stats?.unexpected ?? 0) + (stats?.flaky ?? 0), status)
  const folder = report?.config?.rootDir ?? root
  /** @type {readonly Suite[]} */
  const files = report?.suites ?? []
  return { ...counts, ran: files.flatMap(suite => ranInPlaywright({ ...suite, title: '' }, [], folder)) }
}

/**
 * @typedef {{ title: string, file: string, tests: readonly { status: string }[] }} Spec
 * @typedef {{ title: string, specs?: readonly Spec[], suites?: readonly Suite[] }} Suite
 *
 * @param {Suite} suite
 * @param {readonly string[]} outer
 * @param {string} folder
 * @returns {RanTest[]}
 */
function ranInPlaywright({ title, specs = [], suites = [] }, outer, folder) {
  const groups = title === '' ? outer : [...outer, title]
  const own = specs.map(({ title: last, file, tests }) => ({
    file: relative(root, join(folder, file)),
    titles: [...groups, last],
    hasPassed: tests.length > 0 && tests.every(({ status }) => status === 'expected'),
  }))
  return [...own, ...suites.flatMap(inner => ranInPlaywright(inner, groups, folder))]
}

/** @param {{ status: string, assertionResults: unknown[] }} result */
function isBroken(result) {
  return result.status === 'failed' && result.assertionResults.length === 0
}

/**
 * Reads a report once: the next run must not find an old one.
 * @param {string} file
 */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    return null
  } finally {
    rmSync(file, { force: true })
  }
}

/**
 * A run that failed for a reason outside its tests still counts as a failure.
 * @param {number} passed
 * @param {number} failed
 * @param {number} status
 */
function withStatus(passed, failed, status) {
  return { passed, failed: status !== 0 && failed === 0 ? 1 : failed }
}
