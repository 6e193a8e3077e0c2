import { readFileSync, rmSync } from 'node:fs'

/** @typedef {import('./steps.mjs').Counts} Counts */

/**
 * A file that could not be loaded has no tests of its own and counts as one failure.
 * @param {string} file
 * @param {number} status of the run
 * @returns {Counts}
 */
export function readVitest(file, status) {
  const report = readReport(file)
  const broken = (report?.testResults ?? []).filter(isBroken).length
  return withStatus(report?.numPassedTests ?? 0, (report?.numFailedTests ?? 0) + broken, status)
}

/**
 * @param {string} file
 * @param {number} status of the run
 * @returns {Counts}
 */
export function readPlaywright(file, status) {
  const stats = readReport(file)?.stats
  return withStatus(stats?.expected ?? 0, (stats?.unexpected ?? 0) + (stats?.flaky ?? 0), status)
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
