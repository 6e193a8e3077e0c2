// Sets up what a command needs, then runs it: node scripts/run.mjs settle FILE
// Everything about the set-up goes to standard error; standard output is the command's own.
import './setup/node-version.mjs'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { root } from './setup/places.mjs'
import { runSetup } from './setup/run.mjs'
import { say } from './setup/say.mjs'

/** What a command needs besides the packages. */
const needs = { settle: [], 'check-values': [], bench: ['build'] }

const [name = '', ...args] = process.argv.slice(2)
const file = join(root, 'scripts', `${name}.ts`)
if (!Object.hasOwn(needs, name) || !existsSync(file)) {
  say(`Unknown command "${name}"; there are ${Object.keys(needs).join(', ')}.`)
  process.exit(2)
}
await runSetup(['deps', ...needs[/** @type {keyof typeof needs} */ (name)]])

// npm starts a script in the product's folder; a file is named as seen from where the person stands.
if (process.env.npm_lifecycle_event === name && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD)

const { register } = await import('tsx/esm/api')
register()
process.argv = [process.execPath, file, ...args]
await import(pathToFileURL(file).href)
