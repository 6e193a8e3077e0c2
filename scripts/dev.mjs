// Serves the client with instant reload and restarts the server when its sources change.
import './setup/node-version.mjs'
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { root } from './setup/places.mjs'
import { runSetup } from './setup/run.mjs'

await runSetup(['deps', 'build'])

const commands = [
  ['--import', 'tsx', '--watch', 'server/main.ts'],
  [join(root, 'node_modules', 'vite', 'bin', 'vite.js'), '--config', 'client/vite.config.ts', '--logLevel', 'info'],
]
const children = commands.map(args => spawn(process.execPath, args, { cwd: root, stdio: 'inherit' }))

const stop = () => {
  for (const child of children) child.kill('SIGTERM')
}
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) process.once(signal, stop)
for (const child of children) child.once('exit', stop)
