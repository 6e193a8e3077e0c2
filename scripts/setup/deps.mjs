import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { runLogged } from './command.mjs'
import { SetupFault } from './fault.mjs'
import { root } from './places.mjs'
import { say } from './say.mjs'

const modules = join(root, 'node_modules')
const offline =
  /\b(ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ENETUNREACH|EHOSTUNREACH|ETIMEDOUT|ERR_SOCKET_TIMEOUT|ENOTCACHED)\b/

/**
 * @typedef {object} LockedPackage
 * @property {string} [version]
 * @property {string} [integrity]
 * @property {boolean} [optional]
 * @property {string[]} [os]
 * @property {string[]} [cpu]
 */

/** @returns {boolean} whether node_modules holds what the lock file says, by whatever hand it came there */
export function hasPackages() {
  // npm writes this list last: an install that was cut short leaves none.
  const installed = readPackages(join(modules, '.package-lock.json'))
  return installed !== null && isAsLocked(installed) && isWhole(installed)
}

/** Installs every package of the lock file, the tools for building included. */
export async function installPackages() {
  say('Installing packages …')
  const args = ['ci', '--include=dev', '--prefer-offline', '--no-audit', '--no-fund']
  const patience = ['--fetch-retries=1', '--fetch-retry-mintimeout=1000', '--fetch-timeout=60000']
  const { status, output, file } = await runLogged('npm-ci', 'npm', [...args, ...patience])
  if (status === 127) throw new SetupFault('npm was not found; it comes with Node and must be on the PATH.')
  if (status !== 0 && offline.test(output)) {
    throw new SetupFault(`No network: the packages could not be fetched. Connect and start again (details: ${file}).`)
  }
  if (status !== 0)
    throw new SetupFault(`The packages could not be installed (npm status ${status}, details: ${file}).`)
}

/** Loads the store's native part once, so that a missing one is told before anything is served. */
export function checkNativeModule() {
  const require = createRequire(join(root, 'package.json'))
  try {
    require(hasBuiltInSqlite() ? 'node:sqlite' : '@photostructure/sqlite')
  } catch (error) {
    const reason = error instanceof Error ? error.message.split('\n')[0] : String(error)
    const advice = 'Delete node_modules and start again, or use Node 22.13 or newer, which has it built in'
    throw new SetupFault(`The SQLite module for this machine is missing. ${advice} (${reason}).`)
  }
}

function hasBuiltInSqlite() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  return major > 22 || (major === 22 && minor >= 13)
}

/**
 * @param {string} file
 * @returns {Record<string, LockedPackage> | null}
 */
function readPackages(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages
  } catch {
    return null
  }
}

/**
 * Every package stands in its folder and is made for this machine (a folder copied from another one is not).
 * @param {Record<string, LockedPackage>} installed
 */
function isWhole(installed) {
  return Object.entries(installed).every(
    ([path, { os, cpu }]) =>
      existsSync(join(root, path, 'package.json')) &&
      (os?.includes(process.platform) ?? true) &&
      (cpu?.includes(process.arch) ?? true),
  )
}

/** @param {Record<string, LockedPackage>} installed */
function isAsLocked(installed) {
  const locked = readPackages(join(root, 'package-lock.json')) ?? {}
  return Object.entries(locked).every(([path, { version, integrity, optional }]) => {
    const found = installed[path]
    if (path === '' || found === undefined) return path === '' || optional === true
    return found.version === version && found.integrity === integrity
  })
}
