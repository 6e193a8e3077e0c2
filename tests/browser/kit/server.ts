import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { freePort } from '#tests/kit/free-port.ts'
import { endAtExit } from './at-exit.ts'

/** The built server in a process of its own, on a port and a data folder that survive its restarts. */
export interface ServerProcess {
  readonly url: string
  readonly dataDir: string
  /** What it has logged so far, where it was asked for more than errors. */
  log(): string
  /** SIGKILL, and wait until it is gone. */
  kill(): Promise<void>
  start(): Promise<void>
  stop(): Promise<void>
}

/** `main` is the built server's file; another version's brings its own page. */
export async function startServer(
  main = 'dist/server/main.js',
  level: 'error' | 'trace' = 'error',
): Promise<ServerProcess> {
  const port = await freePort()
  const dataDir = mkdtempSync(join(tmpdir(), 'six-threes-browser-'))
  const url = `http://127.0.0.1:${port}`
  let child: ChildProcess | null = null
  let logged = ''
  const end = async (signal: 'SIGKILL' | 'SIGTERM') => {
    const running = child
    child = null
    if (running === null || running.exitCode !== null) return
    const gone = new Promise(resolve => running.once('exit', resolve))
    running.kill(signal)
    await gone
  }
  const start = async () => {
    child = spawn(process.execPath, ['--enable-source-maps', main], {
      env: { ...process.env, PORT: String(port), HOST: '127.0.0.1', DATA_DIR: dataDir, LOG_LEVEL: level },
      stdio: ['ignore', 'ignore', level === 'error' ? 'inherit' : 'pipe'],
    })
    child.stderr?.on('data', chunk => {
      logged += chunk
    })
    await whenHealthy(url, child)
  }
  // A test that fails stops nothing itself.
  endAtExit(() => {
    child?.kill('SIGKILL')
    rmSync(dataDir, { recursive: true, force: true })
  })
  await start()
  return { url, dataDir, log: () => logged, start, kill: () => end('SIGKILL'), stop: () => end('SIGTERM') }
}

/** Resolves once the server answers for its health; throws when it ends instead. */
async function whenHealthy(url: string, child: ChildProcess): Promise<void> {
  while (child.exitCode === null) {
    const healthy = await fetch(`${url}/healthz`).then(
      answer => answer.ok,
      () => false,
    )
    if (healthy) return
    await new Promise(resolve => setTimeout(resolve, 20))
  }
  throw new Error(`the server ended with ${child.exitCode}`)
}
