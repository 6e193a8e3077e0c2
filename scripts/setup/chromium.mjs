import { accessSync, constants, statSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { runLogged } from './command.mjs'
import { SetupFault } from './fault.mjs'
import { say } from './say.mjs'

const names = ['chromium', 'chromium-browser', 'google-chrome']
const others = 'the other tests run with: npm test -- types lint unit'
const advice = `install it (Debian: apt-get install chromium) or set CHROMIUM_PATH; ${others}`

/** @returns {string | null} the browser for the tests; CHROMIUM_PATH comes first */
export function findChromium() {
  const chosen = process.env.CHROMIUM_PATH
  if (chosen) return isProgram(chosen) ? chosen : null
  const folders = (process.env.PATH ?? '').split(delimiter)
  return folders.flatMap(folder => names.map(name => join(folder, name))).find(isProgram) ?? null
}

/** @returns {boolean} */
export function hasChromium() {
  return findChromium() !== null
}

/** Installs Chromium from the system's packages where that is possible: Debian, as root. */
export async function installChromium() {
  const chosen = process.env.CHROMIUM_PATH
  if (chosen) throw new SetupFault(`CHROMIUM_PATH names ${chosen}, which is no program that can be run: ${advice}.`)
  if (process.getuid?.() !== 0) throw new SetupFault(`No Chromium for the browser tests: ${advice}.`)
  say('Installing Chromium for the browser tests …')
  const first = await install()
  if (first.status === 127) throw new SetupFault(`No Chromium for the browser tests: ${advice}.`)
  // A machine without package lists, or with old ones, fails at first.
  const last = first.status === 0 ? first : await updateAndInstall()
  if (last.status !== 0 || !hasChromium()) {
    throw new SetupFault(`Chromium could not be installed (details: ${last.file}): ${advice}.`)
  }
}

async function updateAndInstall() {
  await apt('apt-update', ['update'])
  return install()
}

function install() {
  return apt('apt-install', ['install', '-y', '--no-install-recommends', 'chromium'])
}

/**
 * @param {string} name
 * @param {readonly string[]} args
 */
function apt(name, args) {
  const env = { DEBIAN_FRONTEND: 'noninteractive' }
  return runLogged(name, 'apt-get', ['-o', 'DPkg::Lock::Timeout=300', ...args], env)
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK)
    return statSync(path).isFile()
  } catch {
    return false
  }
}
