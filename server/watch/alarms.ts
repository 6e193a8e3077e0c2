import type { Logger } from 'pino'

/** What the server says to whoever runs it. server/README.md has a row for each; a test holds the two together. */
export const alarmKinds = [
  'disk-low',
  'disk-full',
  'database-trouble',
  'backup-old',
  'loop-blocked',
  'clock-stepped',
] as const
export type AlarmKind = (typeof alarmKinds)[number]

export interface Alarm {
  readonly kind: AlarmKind
  /** `error` while phones cannot store their scores, else `warn`. */
  readonly level: 'error' | 'warn'
  /** What is so, and what to do. */
  readonly line: string
}

/** An alarm that lasts, or that comes again without ever being over, is said again after so long and no sooner. */
export const againAfterMs = 3_600_000

export interface Alarms {
  raise(alarm: Alarm): void
  /** It is over; said once. */
  clear(kind: AlarmKind): void
}

/** @param steadyMs a clock that nobody puts back */
export function createAlarms(logger: Pick<Logger, 'error' | 'warn' | 'info'>, steadyMs: () => number): Alarms {
  const saidAt = new Map<AlarmKind, number>()
  return {
    raise({ kind, level, line }) {
      const last = saidAt.get(kind)
      if (last !== undefined && steadyMs() - last < againAfterMs) return
      saidAt.set(kind, steadyMs())
      logger[level]({ alarm: kind }, line)
    },
    clear(kind) {
      if (saidAt.delete(kind)) logger.info({ alarm: kind }, `${kind} is over`)
    },
  }
}
