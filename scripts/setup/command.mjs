import { spawn } from 'node:child_process'
import { createWriteStream, mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { cache, root } from './places.mjs'

/**
 * Runs a command with its output in a file under .cache/, so that a failure can be told in one line.
 * @param {string} name of the output file
 * @param {string} command
 * @param {readonly string[]} args
 * @param {Record<string, string>} env
 * @returns {Promise<{ status: number, output: string, file: string }>} status 127 when the command does not exist
 */
export async function runLogged(name, command, args, env = {}) {
  mkdirSync(cache, { recursive: true })
  const file = join(cache, `${name}.log`)
  const log = createWriteStream(file)
  const child = spawn(command, args, { cwd: root, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] })
  child.stdout.pipe(log, { end: false })
  child.stderr.pipe(log, { end: false })
  const stop = () => child.kill('SIGTERM')
  process.once('exit', stop)
  const status = await new Promise(resolve => {
    child.once('error', error => resolve('code' in error && error.code === 'ENOENT' ? 127 : 126))
    child.once('close', (code, signal) => resolve(signal === null ? (code ?? 1) : 1))
  })
  process.off('exit', stop)
  await new Promise(resolve => log.end(resolve))
  return { status, output: readFileSync(file, 'utf8'), file: `.cache/${name}.log` }
}
