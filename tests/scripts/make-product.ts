import { type ChildProcess, execFile } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export interface Run {
  status: number
  stdout: string
  stderr: string
}

/** The product's scripts in a folder of their own, with stand-ins for npm, apt-get and the packages. */
export interface Product {
  folder: string
  start: (args: readonly string[], env?: Record<string, string>) => { child: ChildProcess; done: Promise<Run> }
  run: (args: readonly string[], env?: Record<string, string>) => Promise<Run>
  write: (path: string, text: string) => void
  read: (path: string) => string
  has: (path: string) => boolean
  /** Puts a program on the PATH; it is a Node module. */
  putProgram: (name: string, module: string) => void
  remove: () => void
}

const scripts = fileURLToPath(new URL('../../scripts', import.meta.url))
const tsx = fileURLToPath(new URL('../../node_modules/tsx', import.meta.url))
const sqlite = 'node_modules/@photostructure/sqlite'
const lock = { packages: { '': {}, [sqlite]: { version: '1.0.0' }, 'node_modules/vite': { version: '1.0.0' } } }

/** Notes its call, waits while the test holds it, then does what an install leaves behind: packages, and at last npm's own list of them. */
export const workingNpm = `
import { appendFileSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { setTimeout } from 'node:timers/promises'
appendFileSync('npm-calls', process.argv.slice(2).join(' ') + '\\n')
await setTimeout(300)
while (existsSync('npm-hold')) await setTimeout(20)
const lock = JSON.parse(readFileSync('package-lock.json', 'utf8'))
for (const path of Object.keys(lock.packages).filter(path => path !== '')) {
  mkdirSync(path, { recursive: true })
  writeFileSync(path + '/package.json', '{"main":"main.js"}')
  writeFileSync(path + '/main.js', '')
}
mkdirSync('node_modules/vite/bin', { recursive: true })
writeFileSync('node_modules/vite/bin/vite.js', readFileSync('stand-in-vite.js'))
symlinkSync(${JSON.stringify(tsx)}, 'node_modules/tsx')
writeFileSync('node_modules/.package-lock.json', JSON.stringify(lock))
`

const workingVite = `
const { appendFileSync, mkdirSync, writeFileSync } = require('node:fs')
appendFileSync('vite-calls', process.argv.slice(2).join(' ') + ' ' + process.env.NODE_ENV + '\\n')
for (const file of ['dist/server/main.js', 'dist/client/index.html', 'dist/client/worker.js']) {
  mkdirSync(require('node:path').dirname(file), { recursive: true })
  writeFileSync(file, process.env.BUILD_ID)
}
`

export function makeProduct(): Product {
  const folder = mkdtempSync(join(tmpdir(), 'six-threes-'))
  const bin = join(folder, 'bin')
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), text)
  }
  cpSync(scripts, join(folder, 'scripts'), { recursive: true })
  write('package.json', '{"type":"module"}')
  write('package-lock.json', JSON.stringify(lock))
  write('bin/package.json', '{"type":"module"}')
  write('stand-in-vite.js', workingVite)
  write('core/hole.ts', 'export const par = 4\n')

  const start: Product['start'] = (args, env = {}) => startNode(folder, args, { PATH: bin, HOME: folder, ...env })
  const putProgram: Product['putProgram'] = (name, module) => {
    write(`bin/${name}`, `#!${process.execPath}\n${module}`)
    chmodSync(join(bin, name), 0o755)
  }
  putProgram('npm', workingNpm)
  return {
    folder,
    start,
    run: (args, env) => start(args, env).done,
    write,
    read: path => readFileSync(join(folder, path), 'utf8'),
    has: path => existsSync(join(folder, path)),
    putProgram,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}

function startNode(cwd: string, args: readonly string[], env: Record<string, string>): ReturnType<Product['start']> {
  let child: ChildProcess | null = null
  const done = new Promise<Run>(resolve => {
    child = execFile(process.execPath, args, { cwd, env }, (_error, stdout, stderr) => {
      resolve({ status: child?.exitCode ?? 1, stdout, stderr })
    })
  })
  if (child === null) throw new Error('node did not start')
  return { child, done }
}
