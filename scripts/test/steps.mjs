import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { cache, root } from '../setup/places.mjs'
import { readPlaywright, readVitest } from './reports.mjs'

/** @typedef {{ passed: number, failed: number, ran?: import('./failure-rows.mjs').RanTest[] }} Counts */

const projects = ['.', 'core', 'server', 'client', 'client/tsconfig.worker.json', 'tests']
/** The measurements whose budget is checked in every run; the others take longer, or a machine of their own. */
const benches = ['standings']
const timingReport = join(cache, 'playwright-timing.json')

/**
 * Every check of the product in the order in which they run. What measures time runs alone, the rest two at a time.
 * @type {Record<string, { needs: readonly string[], run: () => Promise<Counts> }>}
 */
export const steps = {
  types: { needs: ['deps'], run: checkTypes },
  lint: { needs: ['deps'], run: async () => asOneCheck(await runModule('@biomejs/biome/bin/biome', ['check', '.'])) },
  unit: { needs: ['deps', 'build'], run: runVitest },
  browser: {
    needs: ['deps', 'build', 'chromium'],
    run: () => runPlaywright('browser', join(cache, 'playwright.json')),
  },
  timing: { needs: ['deps', 'build', 'chromium'], run: () => runPlaywright('timing', timingReport) },
  bench: { needs: ['deps', 'build'], run: runBenches },
}

async function checkTypes() {
  let worst = 0
  for (const project of projects) {
    worst = Math.max(worst, await runModule('typescript/bin/tsc', ['--noEmit', '-p', project]))
  }
  return asOneCheck(worst)
}

async function runVitest() {
  const report = join(cache, 'vitest.json')
  return readVitest(report, await runModule('vitest/vitest.mjs', ['run', '--config', 'tests/vitest.config.ts']))
}

/**
 * @param {string} project
 * @param {string} report
 */
async function runPlaywright(project, report) {
  const args = ['test', '--config', 'tests/playwright.config.ts', `--project=${project}`]
  if (project === 'timing') args.push('--workers=1', '--pass-with-no-tests')
  return readPlaywright(report, await runModule('@playwright/test/cli.js', args, { PLAYWRIGHT_JSON: report }))
}

/** Each budget that holds is a check passed. */
async function runBenches() {
  const counts = { passed: 0, failed: 0 }
  for (const name of benches) {
    const isHeld = (await runNode([join(root, 'scripts', 'run.mjs'), 'bench', name])) === 0
    counts[isHeld ? 'passed' : 'failed'] += 1
  }
  return counts
}

/**
 * @param {string} file of a package's command
 * @param {readonly string[]} args
 * @param {Record<string, string>} env
 * @returns {Promise<number>} its exit status
 */
function runModule(file, args, env = {}) {
  return runNode([join(root, 'node_modules', file), ...args], env)
}

/**
 * @param {readonly string[]} command
 * @param {Record<string, string>} env
 * @returns {Promise<number>} its exit status
 */
function runNode(command, env = {}) {
  const child = spawn(process.execPath, command, {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'inherit', 'inherit'],
  })
  return new Promise(resolve => {
    child.once('error', () => resolve(1))
    child.once('close', code => resolve(code ?? 1))
  })
}

/** @param {number} status */
function asOneCheck(status) {
  return status === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 }
}
