import { type ChildProcess, spawn } from 'node:child_process'
import { createInterface } from 'node:readline'

export interface Child {
  readonly port: number
  stop(): Promise<void>
}

/** Starts a TypeScript file in a process of its own and waits for the line with its port. */
export async function startChild(file: string, args: readonly string[] = []): Promise<Child> {
  const child = spawn(process.execPath, ['--import', 'tsx', file, ...args], { stdio: ['ignore', 'pipe', 'inherit'] })
  const port = await firstPort(child)
  return { port, stop: () => stopChild(child) }
}

function firstPort(child: ChildProcess): Promise<number> {
  return new Promise((resolve, reject) => {
    child.once('exit', code => reject(new Error(`ended with ${code} before it listened`)))
    if (!child.stdout) throw new Error('no standard output')
    createInterface({ input: child.stdout }).on('line', line => {
      if (line.startsWith('{"port"')) resolve((JSON.parse(line) as { port: number }).port)
    })
  })
}

function stopChild(child: ChildProcess): Promise<void> {
  return new Promise(resolve => {
    child.once('exit', () => resolve())
    child.kill('SIGTERM')
  })
}
