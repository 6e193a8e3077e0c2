import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { runLogged } from './command.mjs'
import { SetupFault } from './fault.mjs'
import { root } from './places.mjs'
import { say } from './say.mjs'

const sources = ['core', 'shared', 'server', 'client', 'package.json', 'package-lock.json', 'tsconfig.json']
const stamp = join(root, 'dist', 'sources')
const results = ['dist/server/main.js', 'dist/client/index.html', 'dist/client/worker.js']

/** @returns {boolean} whether client and server are built from the sources as they stand */
export function hasBuild() {
  const isThere = results.every(file => existsSync(join(root, file)))
  return isThere && existsSync(stamp) && readFileSync(stamp, 'utf8') === sourcesHash()
}

/** Builds client and server; the note of the sources comes last, so that a build that was cut short is made again. */
export async function makeBuild() {
  say('Building …')
  const hash = sourcesHash()
  rmSync(stamp, { force: true })
  for (const part of ['client', 'server']) await buildPart(part, hash.slice(0, 12))
  mkdirSync(join(root, 'dist'), { recursive: true })
  writeFileSync(stamp, hash)
}

/**
 * @param {string} part
 * @param {string} buildId
 */
async function buildPart(part, buildId) {
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js')
  const args = [vite, 'build', '--config', `${part}/vite.config.ts`]
  const env = { NODE_ENV: 'production', NO_COLOR: '1', BUILD_ID: buildId }
  const { status, output, file } = await runLogged(`build-${part}`, process.execPath, args, env)
  if (status === 0) return
  throw new SetupFault(`The ${part} could not be built: ${reasonIn(output) ?? `status ${status}`} (details: ${file}).`)
}

/**
 * @param {string} output
 * @returns {string | undefined} the first line that says what is wrong, after the lines that say that something is
 */
function reasonIn(output) {
  const lines = output.split('\n').map(line => line.trim())
  return lines.find(line => line !== '' && !/build failed|error during build/i.test(line))
}

/** @returns {string} changes when any source changes */
function sourcesHash() {
  const hash = createHash('sha256')
  for (const file of sources.flatMap(listFiles)) {
    hash
      .update(`${file}\0`)
      .update(readFileSync(join(root, file)))
      .update('\0')
  }
  return hash.digest('hex')
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function listFiles(path) {
  if (!existsSync(join(root, path))) return []
  if (path.includes('.json')) return [path]
  return readdirSync(join(root, path), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => join(entry.parentPath, entry.name).slice(root.length))
    .sort()
}
