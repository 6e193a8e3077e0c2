import { execFile } from 'node:child_process'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../', import.meta.url))

export interface Ran {
  readonly status: number
  readonly stdout: string
  readonly stderr: string
}

/** A command as npm starts it, with these settings and no other. */
export const runCommand = (
  command: string,
  env: Readonly<Record<string, string>>,
  ...args: readonly string[]
): Promise<Ran> =>
  new Promise(done => {
    const options = { cwd: root, env: { PATH: process.env.PATH, HOME: process.env.HOME, ...env } }
    execFile(process.execPath, ['scripts/run.mjs', command, ...args], options, (error, stdout, stderr) =>
      done({ status: error === null ? 0 : Number(error.code), stdout, stderr }),
    )
  })
