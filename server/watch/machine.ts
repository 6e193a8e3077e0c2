import { readFileSync, statfsSync, statSync } from 'node:fs'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import { databaseFile, lastBackupFile, lockFile } from '../store/database-file.ts'

export interface LoopDelay {
  /** Milliseconds that work waited for the event loop since this was last read. */
  readonly p99Ms: number
  readonly maxMs: number
}

/** What is read of the machine that the server runs on; a test brings its own. */
export interface Machine {
  /** The clock that people set, milliseconds since 1970. */
  wallMs(): number
  /** A clock that nobody sets, milliseconds from any beginning. */
  steadyMs(): number
  diskFreeBytes(): number
  /** Of SQLite's own log beside the database. */
  walBytes(): number
  /** Read once a look: it starts again. */
  loopDelay(): LoopDelay
  /** Milliseconds since 1970; null when there is none. */
  lastBackupAt(): number | null
  /** When the data folder was first used, milliseconds since 1970. */
  firstUsedAt(): number
  stop(): void
}

const resolutionMs = 20

export function machineOf(folder: string): Machine {
  const loop = monitorEventLoopDelay({ resolution: resolutionMs })
  loop.enable()
  // What it measures includes the pause between two looks of its own.
  const waitedMs = (nanoseconds: number) => Math.max(0, nanoseconds / 1e6 - resolutionMs)
  return {
    wallMs: () => Date.now(),
    steadyMs: () => performance.now(),
    diskFreeBytes() {
      const { bavail, bsize } = statfsSync(folder)
      return bavail * bsize
    },
    walBytes: () => statSync(`${databaseFile(folder)}-wal`, { throwIfNoEntry: false })?.size ?? 0,
    loopDelay() {
      const read = { p99Ms: waitedMs(loop.percentile(99)), maxMs: waitedMs(loop.max) }
      // The first interval after it is not counted.
      loop.reset()
      return read
    },
    lastBackupAt: () => readLastBackup(lastBackupFile(folder)),
    firstUsedAt: () => statSync(lockFile(folder), { throwIfNoEntry: false })?.birthtimeMs || Date.now(),
    stop: () => void loop.disable(),
  }
}

/** A note that is not there or not ours counts as none. */
function readLastBackup(path: string): number | null {
  try {
    const { at } = JSON.parse(readFileSync(path, 'utf8')) as { readonly at?: unknown }
    return typeof at === 'number' && Number.isFinite(at) ? at : null
  } catch {
    return null
  }
}
