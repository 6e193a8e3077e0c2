import type { Clock } from '../live/clock.ts'
import type { Store } from '../store/store.ts'
import type { Alarm, AlarmKind, Alarms } from './alarms.ts'
import type { LoopDelay, Machine } from './machine.ts'

/** Below this there is still time to act. */
export const lowDiskBytes = 500_000_000
/** A phone waits for its answer as long as the loop stands still. */
export const blockedMs = 1_000
/** Clocks are set by small steps all the time; this one was put. */
export const steppedMs = 5_000
export const lookEveryMs = 10_000
const hourMs = 3_600_000

export interface WatchOptions {
  readonly machine: Machine
  readonly store: Pick<Store, 'trouble'>
  readonly alarms: Alarms
  readonly clock: Pick<Clock, 'after'>
  /** A backup older than this is too old; 0 when nobody wants to hear of it. */
  readonly backupAlarmHours: number
  readonly failed: (error: unknown) => void
}

/** What was last read, for the gauges. */
export interface Readings {
  readonly diskFreeBytes: number
  readonly walBytes: number
  readonly loopDelay: LoopDelay
  /** Milliseconds since 1970; null when there is none. */
  readonly lastBackupAt: number | null
}

export interface Watch {
  /** Reads and judges once. */
  look(): Promise<void>
  latest(): Readings
  /** How often the machine's clock has been put, as far as was seen. */
  steps(): number
  stop(): void
}

/** Looks at disk, database, backup, loop and clock every ten seconds, and says what to do. */
export function createWatch({ machine, store, alarms, clock, backupAlarmHours, failed }: WatchOptions): Watch {
  let latest: Readings = { diskFreeBytes: 0, walBytes: 0, loopDelay: { p99Ms: 0, maxMs: 0 }, lastBackupAt: null }
  let before = { wallMs: machine.wallMs(), steadyMs: machine.steadyMs() }
  let steps = 0
  let callOff = () => {}

  const judge = (kind: AlarmKind, alarm: Omit<Alarm, 'kind'> | null) => {
    if (alarm) alarms.raise({ kind, ...alarm })
    else alarms.clear(kind)
  }
  const seeStep = () => {
    const now = { wallMs: machine.wallMs(), steadyMs: machine.steadyMs() }
    const stepMs = now.wallMs - before.wallMs - (now.steadyMs - before.steadyMs)
    before = now
    if (Math.abs(stepMs) < steppedMs) return
    steps++
    alarms.raise({ kind: 'clock-stepped', ...clockStepped(stepMs) })
  }
  const look = async () => {
    latest = {
      diskFreeBytes: machine.diskFreeBytes(),
      walBytes: machine.walBytes(),
      loopDelay: machine.loopDelay(),
      lastBackupAt: machine.lastBackupAt(),
    }
    seeStep()
    const trouble = await store.trouble()
    judge('disk-full', trouble === 'disk' ? diskFull : null)
    judge('database-trouble', trouble === 'database' ? databaseTrouble : null)
    judge('disk-low', trouble !== 'disk' && latest.diskFreeBytes < lowDiskBytes ? diskLow(latest.diskFreeBytes) : null)
    if (latest.loopDelay.maxMs >= blockedMs)
      alarms.raise({ kind: 'loop-blocked', ...loopBlocked(latest.loopDelay.maxMs) })
    const hours = (machine.wallMs() - (latest.lastBackupAt ?? machine.firstUsedAt())) / hourMs
    const isOld = backupAlarmHours > 0 && hours > backupAlarmHours
    judge('backup-old', isOld ? backupOld(hours, latest.lastBackupAt === null, backupAlarmHours) : null)
  }
  const plan = () => {
    callOff = clock.after(lookEveryMs, () => void look().catch(failed).finally(plan))
  }
  plan()
  return { look, latest: () => latest, steps: () => steps, stop: () => callOff() }
}

const diskLow = (bytes: number): Omit<Alarm, 'kind'> => ({
  level: 'warn',
  line:
    `The disk of the data folder has ${Math.round(bytes / 1e6)} MB left. Free some space or move DATA_DIR to a larger ` +
    'disk; once it is full, phones keep their scores and wait.',
})

const diskFull: Omit<Alarm, 'kind'> = {
  level: 'error',
  line:
    'The disk of the data folder takes nothing: it is full, read-only or failing. Free some space now; phones keep ' +
    'their scores, and it goes on by itself.',
}

const databaseTrouble: Omit<Alarm, 'kind'> = {
  level: 'error',
  line:
    'The database does not take what comes; phones keep their scores. End any other program that has six-threes.db ' +
    'open; if that is not it, restart the server, which checks the database and says what is wrong.',
}

const loopBlocked = (ms: number): Omit<Alarm, 'kind'> => ({
  level: 'warn',
  line:
    `The server stood still for ${(ms / 1_000).toFixed(1)} s, and every phone waited. Look for another program that ` +
    'takes the processor, the memory or the disk.',
})

const clockStepped = (ms: number): Omit<Alarm, 'kind'> => ({
  level: 'warn',
  line:
    `The clock of this machine was put ${ms > 0 ? 'forward' : 'back'} by ${Math.round(Math.abs(ms) / 1_000)} s, or it ` +
    'slept. Scores are safe, the times beside them are off: switch time synchronisation on (timedatectl set-ntp true).',
})

const backupOld = (hours: number, isNone: boolean, alarmHours: number): Omit<Alarm, 'kind'> => ({
  level: 'warn',
  line:
    `${isNone ? 'There has been no backup for' : 'The last backup is older than'} ${Math.floor(hours)} hours ` +
    `(BACKUP_ALARM_HOURS is ${alarmHours}). Run npm run backup, and see why its timer does not.`,
})
