import { join } from 'node:path'
import { hasBuild, makeBuild } from './build.mjs'
import { hasChromium, installChromium } from './chromium.mjs'
import { checkNativeModule, hasPackages, installPackages } from './deps.mjs'
import { SetupFault } from './fault.mjs'
import { withLock } from './lock.mjs'
import { cache } from './places.mjs'
import { say } from './say.mjs'

const signals = /** @type {const} */ (['SIGINT', 'SIGTERM'])

/** @typedef {{ isReady: () => boolean, make: () => Promise<void>, check?: () => void }} Part */

/** @type {Record<string, Part>} */
const parts = {
  deps: { isReady: hasPackages, make: installPackages, check: checkNativeModule },
  build: { isReady: hasBuild, make: makeBuild },
  chromium: { isReady: hasChromium, make: installChromium },
}

/**
 * Makes each named part ready, in order; what is ready is left alone. A fault ends the process with one line.
 * @param {readonly string[]} names
 */
export async function runSetup(names) {
  // Ends through "exit", where the lock is given back and a running npm is stopped.
  const onSignal = () => process.exit(1)
  for (const signal of signals) process.once(signal, onSignal)
  try {
    for (const name of names) await makeReady(name)
  } catch (error) {
    const line = lineOf(error)
    if (line === null) throw error
    say(line)
    process.exit(1)
  } finally {
    for (const signal of signals) process.off(signal, onSignal)
  }
}

/** @param {string} name */
async function makeReady(name) {
  const part = parts[name]
  if (part === undefined) throw new SetupFault(`Unknown part "${name}"; there are ${Object.keys(parts).join(', ')}.`)
  if (!part.isReady()) {
    const onWait = () => say('Waiting for another set-up in this folder to finish …')
    await withLock(join(cache, 'setup.lock'), onWait, async () => {
      if (!part.isReady()) await part.make()
    })
  }
  part.check?.()
}

/**
 * @param {unknown} error
 * @returns {string | null} null for a bug, which keeps its stack
 */
function lineOf(error) {
  if (error instanceof SetupFault) return error.message
  return error instanceof Error && 'syscall' in error ? `The set-up stopped: ${error.message}.` : null
}
