import { join } from 'node:path'
import { hasBuild, makeBuild } from './build.mjs'
import { hasChromium, installChromium } from './chromium.mjs'
import { checkNativeModule, hasPackages, installPackages } from './deps.mjs'
import { SetupFault } from './fault.mjs'
import { withLock } from './lock.mjs'
import { cache } from './places.mjs'
import { say } from './say.mjs'

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
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) process.once(signal, () => process.exit(1))
  try {
    for (const name of names) await makeReady(name)
  } catch (error) {
    if (!(error instanceof SetupFault)) throw error
    say(error.message)
    process.exit(1)
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
