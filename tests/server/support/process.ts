import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import { onTestFinished } from 'vitest'

const root = fileURLToPath(new URL('../../..', import.meta.url))

export interface ServerProcess {
  readonly child: ChildProcess
  /** Everything on standard output and on standard error so far. */
  readonly said: { out: string; err: string }
  /** Resolves with the status, or the signal that ended it. */
  readonly ended: Promise<number | NodeJS.Signals | null>
}

/** The real server in a process of its own, with this environment and no other setting; allowed so many open files. */
export function startServer(env: Readonly<Record<string, string>>, mostFiles: number | null = null): ServerProcess {
  const command = [process.execPath, '--import', 'tsx', 'server/main.ts']
  const [file = '', ...args] =
    mostFiles === null ? command : ['sh', '-c', `ulimit -n ${mostFiles} && exec "$0" "$@"`, ...command]
  const child = spawn(file, args, {
    cwd: root,
    env: { PATH: process.env.PATH, HOME: process.env.HOME, HOST: '127.0.0.1', LOG_LEVEL: 'error', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const said = { out: '', err: '' }
  child.stdout?.on('data', chunk => {
    said.out += chunk
  })
  child.stderr?.on('data', chunk => {
    said.err += chunk
  })
  const ended = once(child, 'close').then(([status, signal]) => status ?? signal)
  onTestFinished(() => void child.kill('SIGKILL'))
  return { child, said, ended }
}

/** The address, once the server has said it. */
export async function urlOf({ said, ended }: ServerProcess): Promise<string> {
  let hasEnded = false
  void ended.then(() => {
    hasEnded = true
  })
  for (;;) {
    const [, port] = /http:\/\/127\.0\.0\.1:(\d+)/.exec(said.out) ?? []
    if (port !== undefined) return `http://127.0.0.1:${port}`
    if (hasEnded) throw new Error(`the server ended: ${said.err}`)
    await new Promise(resolve => setTimeout(resolve, 10))
  }
}
