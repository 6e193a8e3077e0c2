// Sets up what a command needs, then runs it: node scripts/run.mjs settle FILE
// Everything about the set-up goes to standard error; standard output is the command's own.
import './setup/node-version.mjs'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { findChromium } from './setup/chromium.mjs'
import { root } from './setup/places.mjs'
import { runSetup } from './setup/run.mjs'
import { say } from './setup/say.mjs'

const [name = '', ...args] = process.argv.slice(2)
/** The measurements of the page. */
const inBrowser = ['script', 'tap', 'cold']

/** What each command needs besides the packages, and whether it is given a file. */
const commands = {
  settle: { needs: [], takesFile: true },
  'check-values': { needs: [], takesFile: true },
  bench: { needs: inBrowser.includes(args[0] ?? '') ? ['build', 'chromium'] : ['build'], takesFile: false },
  chaos: { needs: [], takesFile: false },
  faults: { needs: ['build', 'chromium'], takesFile: false },
  demo: { needs: [], takesFile: false },
  backup: { needs: [], takesFile: true },
  outings: { needs: [], takesFile: false },
  restore: { needs: [], takesFile: true },
  sheets: { needs: ['build', 'chromium'], takesFile: false },
  words: { needs: [], takesFile: false },
}

const file = join(root, 'scripts', `${name}.ts`)
if (!Object.hasOwn(commands, name) || !existsSync(file)) {
  say(`Unknown command "${name}"; there are ${Object.keys(commands).join(', ')}.`)
  process.exit(2)
}
const { needs, takesFile } = commands[/** @type {keyof typeof commands} */ (name)]
await runSetup(['deps', ...needs])
const chromium = findChromium()
if (chromium !== null) process.env.CHROMIUM_PATH = chromium

// npm starts a script in the product's folder; a file is named as seen from where the person stands.
const standing = process.env.npm_lifecycle_event === name ? process.env.INIT_CWD : undefined
if (takesFile && standing !== undefined) process.chdir(standing)

const { register } = await import('tsx/esm/api')
register()
process.argv = [process.execPath, file, ...args]
await import(pathToFileURL(file).href)
