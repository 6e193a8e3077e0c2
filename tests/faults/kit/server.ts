import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { freePort } from '#tests/kit/free-port.ts'
import type { Ends } from './ends.ts'
import { pause } from './waiting.ts'

export const root = fileURLToPath(new URL('../../..', import.meta.url))

export interface Ended {
  /** The status, or the signal that ended it. */
  readonly status: number | NodeJS.Signals | null
  readonly err: string
}

/** The built server as it is run, on a port and a data folder that outlive its restarts. */
export interface RealServer {
  readonly url: string
  readonly folder: string
  readonly pid: () => number
  /** Resolves once it answers for its health; throws with its last words when it ends instead. */
  readonly start: () => Promise<void>
  /** Starts one that is expected to end by itself. */
  readonly startInVain: () => Promise<Ended>
  readonly signal: (signal: NodeJS.Signals) => void
  /** Sends the signal and waits until it is gone. */
  readonly end: (signal: 'SIGKILL' | 'SIGTERM') => Promise<Ended>
}

interface Running {
  readonly child: ChildProcess
  readonly said: { err: string }
  readonly ended: Promise<Ended>
}

interface ServerParts {
  readonly folder?: string
  /** Put before the command, to run it in a namespace of its own. */
  readonly before?: readonly string[]
  /** The address it is reached at, where that is not this machine's own; it then serves on every one. */
  readonly at?: string
}

export function makeFolder(ends: Ends): string {
  const folder = mkdtempSync(join(tmpdir(), 'six-threes-faults-'))
  ends.add(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

export async function makeServer(ends: Ends, { folder = makeFolder(ends), before = [], at }: ServerParts = {}) {
  const port = await freePort()
  const url = `http://${at ?? '127.0.0.1'}:${port}`
  const env = { PATH: process.env.PATH, HOME: process.env.HOME, HOST: at ? '0.0.0.0' : '127.0.0.1', LOG_LEVEL: 'error' }
  let running: Running | null = null

  const run = (onPort: number): Running => {
    const [command = '', ...args] = [...before, process.execPath, join(root, 'dist', 'server', 'main.js')]
    const child = spawn(command, args, {
      env: { ...env, PORT: String(onPort), DATA_DIR: folder },
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    const said = { err: '' }
    child.stderr?.on('data', chunk => {
      said.err += chunk
    })
    const ended = once(child, 'close').then(([status, signal]) => ({ status: status ?? signal, err: said.err }))
    ends.add(async () => {
      child.kill('SIGKILL')
      await ended
    })
    return { child, said, ended }
  }

  const server: RealServer = {
    url,
    folder,
    pid: () => running?.child.pid ?? 0,
    start: async () => {
      running = run(port)
      await whenHealthy(url, running)
    },
    startInVain: async () => {
      const vain = run(await freePort())
      const limit = setTimeout(() => vain.child.kill('SIGKILL'), 20_000)
      const ended = await vain.ended
      clearTimeout(limit)
      return ended
    },
    signal: signal => void running?.child.kill(signal),
    end: async signal => {
      if (!running) throw new Error('no server runs')
      running.child.kill(signal)
      return running.ended
    },
  }
  await server.start()
  return server
}

async function whenHealthy(url: string, { child, said }: Running): Promise<void> {
  while (child.exitCode === null && child.signalCode === null) {
    const isHealthy = await fetch(`${url}/healthz`).then(
      ({ ok }) => ok,
      () => false,
    )
    if (isHealthy) return
    await pause(10)
  }
  throw new Error(`the server ended: ${said.err}`)
}
