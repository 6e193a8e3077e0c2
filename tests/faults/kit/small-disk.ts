import { execFileSync, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { closeSync, openSync, rmSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import type { Ends } from './ends.ts'
import { makeFolder, makeServer, type RealServer } from './server.ts'

/** A server whose disk can be filled up and freed while it runs. */
export interface SmallDisk {
  readonly server: RealServer
  readonly fill: () => void
  readonly free: () => void
  /** The data folder as seen from here. */
  readonly seen: string
}

/** How the disk is made to be full: a file system of a few megabytes, or a limit on the size of the files of the process. */
export type Means = 'small file system' | 'file size limit'

const hasMount = (): boolean => spawnSync('unshare', ['-rm', 'mount', '-t', 'tmpfs', 'none', '/mnt']).status === 0
const hasLimit = (): boolean => spawnSync('prlimit', ['--version']).status === 0

/** What this machine permits, the truest first; empty where it permits none. */
export const meansHere = (): readonly Means[] => [
  ...(hasMount() ? (['small file system'] as const) : []),
  ...(hasLimit() ? (['file size limit'] as const) : []),
]

export const makeSmallDisk = (ends: Ends, means: Means): Promise<SmallDisk> =>
  means === 'small file system' ? onSmallFileSystem(ends) : withinLimit(ends)

/** Mounted in a namespace of its own, which needs no rights and is gone with its processes. */
async function onSmallFileSystem(ends: Ends): Promise<SmallDisk> {
  const folder = makeFolder(ends)
  const mount = `mount -t tmpfs -o size=8m none '${folder}' && echo mounted && exec cat`
  const holder = spawn('unshare', ['-rm', 'sh', '-c', mount], { stdio: ['pipe', 'pipe', 'inherit'] })
  ends.add(() => holder.stdin.end())
  await once(holder.stdout, 'data')
  const inside = ['nsenter', '-t', String(holder.pid), '-U', '-m', '--preserve-credentials']
  const seen = join(`/proc/${holder.pid}/root`, folder)
  const server = await makeServer(ends, { folder, before: inside })
  const ballast = join(seen, 'ballast')
  return {
    server,
    seen,
    fill: () => fillUp(ballast),
    free: () => rmSync(ballast),
  }
}

/** To the last block, so that not one page more finds room. */
function fillUp(ballast: string): void {
  const file = openSync(ballast, 'w')
  try {
    for (;;) writeSync(file, Buffer.alloc(4_096))
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw error
  } finally {
    closeSync(file)
  }
}

/** Every write beyond the size that the log has now fails, for this process alone; only the soft limit is set. */
async function withinLimit(ends: Ends): Promise<SmallDisk> {
  const server = await makeServer(ends)
  const limit = (bytes: string): void => {
    execFileSync('prlimit', ['--pid', String(server.pid()), `--fsize=${bytes}:`])
  }
  return { server, seen: server.folder, fill: () => limit('8192'), free: () => limit('unlimited') }
}
