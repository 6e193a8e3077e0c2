import type { Counter, Gauge, Registry } from 'prom-client'
import type { LinkRefusal } from '../live/link-gate.ts'
import type { Tally } from './tally.ts'
import type { Readings } from './watch.ts'

export interface GaugeSources {
  readonly tally: Tally
  readonly links: () => number
  readonly refused: Readonly<Record<LinkRefusal, number>>
  readonly openLogs: () => number
  readonly failures: () => number
  readonly readings: () => Readings
}

export interface Gauges {
  readonly registry: Registry
  /** One commit, however many ops were in it. */
  committed(seconds: number): void
}

/**
 * What Prometheus reads. Names follow its rules: one prefix, base units in the name, `_total` for what only grows, times
 * as timestamps. Source: https://prometheus.io/docs/practices/naming/
 */
export async function createGauges(sources: GaugeSources): Promise<Gauges> {
  // Loaded by a server that is asked for gauges, and by no other.
  const { Counter, Gauge, Histogram, Registry } = await import('prom-client')
  const registry = new Registry()
  const registers = [registry]
  const gauge = (name: string, help: string, read: () => number): Gauge =>
    new Gauge({
      name: `sixthrees_${name}`,
      help,
      registers,
      collect() {
        this.set(read())
      },
    })
  const total = (name: string, help: string, read: () => number): Counter =>
    new Counter({
      name: `sixthrees_${name}`,
      help,
      registers,
      collect() {
        this.reset()
        this.inc(read())
      },
    })
  const { tally, readings } = sources
  gauge('links', 'Phones and boards that are connected.', sources.links)
  gauge('logs_open', 'Outings that somebody follows.', sources.openLogs)
  total('ops_stored_total', 'Acts stored since the start.', () => tally.stored)
  const totalByReason = <R extends string>(
    name: string,
    help: string,
    read: () => Readonly<Record<R, number>>,
  ): Counter =>
    new Counter({
      name: `sixthrees_${name}`,
      help,
      labelNames: ['reason'],
      registers,
      collect() {
        this.reset()
        for (const [reason, n] of Object.entries<number>(read())) this.inc({ reason: reason.replaceAll(' ', '_') }, n)
      },
    })
  totalByReason(
    'links_refused_total',
    'Phones and boards not let in since the start, by reason.',
    () => sources.refused,
  )
  totalByReason('later_total', 'Acts that were asked to come again since the start, by reason.', () => tally.later)
  const commits = new Histogram({
    name: 'sixthrees_commit_duration_seconds',
    help: 'How long one commit to the disk takes.',
    buckets: [0.001, 0.005, 0.02, 0.1, 0.5, 2],
    registers,
  })
  gauge('event_loop_delay_p99_seconds', 'How long work waited in the last ten seconds, 99 of 100 times at most.', () =>
    secondsOf(readings().loopDelay.p99Ms),
  )
  gauge('event_loop_delay_max_seconds', 'The longest that work waited in the last ten seconds.', () =>
    secondsOf(readings().loopDelay.maxMs),
  )
  gauge('disk_free_bytes', 'Free on the disk of the data folder.', () => readings().diskFreeBytes)
  gauge('database_log_bytes', 'SQLite’s own log beside the database.', () => readings().walBytes)
  gauge('last_backup_timestamp_seconds', 'When the last backup was made; 0 when there is none.', () =>
    secondsOf(readings().lastBackupAt ?? 0),
  )
  total('failures_total', 'Errors of the server’s own that were answered since the start.', sources.failures)
  gauge('resident_memory_bytes', 'Memory of the process.', () => process.memoryUsage.rss())
  return { registry, committed: seconds => commits.observe(seconds) }
}

const secondsOf = (ms: number): number => ms / 1_000
