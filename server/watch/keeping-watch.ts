import type { Logger } from 'pino'
import type { Clock } from '../live/clock.ts'
import type { Dispatch } from '../live/dispatch.ts'
import type { LinkRefusal } from '../live/link-gate.ts'
import type { Room } from '../live/room.ts'
import type { Store } from '../store/store.ts'
import { createAlarms } from './alarms.ts'
import { createFailureLog } from './failure-log.ts'
import { type GaugeServer, serveGauges } from './gauge-server.ts'
import { createGauges, type Gauges } from './gauges.ts'
import { type Machine, machineOf } from './machine.ts'
import { startRetention } from './retention.ts'
import { createTally } from './tally.ts'
import { createWatch } from './watch.ts'

export interface WatchSettings {
  /** A backup older than this is said to be too old; 0: never. */
  readonly backupAlarmHours?: number
  /** An outing in which nothing was stored for so long is deleted; 0: never. */
  readonly retentionDays?: number
  /** Where the gauges are served, on this machine alone; null: nowhere, 0: any free port. */
  readonly metricsPort?: number | null
}

export interface KeepingWatchOptions {
  readonly settings: WatchSettings
  readonly dataFolder: string
  readonly logger: Logger
  readonly clock: Clock
  readonly machine?: Machine | undefined
}

export interface Watched {
  readonly store: Store
  readonly room: Room
  readonly links: () => number
  /** Links that were not let in since the start. */
  readonly refused: Readonly<Record<LinkRefusal, number>>
}

/** Everything that whoever runs the server hears of: failures, alarms, what retention deletes, and the gauges. */
export interface KeepingWatch {
  readonly failed: (error: unknown) => void
  readonly committed: (seconds: number) => void
  readonly tallied: (dispatch: Dispatch) => Dispatch
  /** From here on. Fails with a StartFault when the gauges cannot be served. */
  start(watched: Watched): Promise<void>
  /** Null while no gauges are served. */
  metricsPort(): number | null
  end(): void
}

export function createKeepingWatch({ settings, logger, clock, ...options }: KeepingWatchOptions): KeepingWatch {
  const { backupAlarmHours = 0, retentionDays: days = 0, metricsPort = null } = settings
  const steadyMs = () => performance.now()
  let isEnding = false
  const failures = createFailureLog(logger, steadyMs, () => isEnding)
  const { failed } = failures
  const { tally, tallied } = createTally()
  const ends: (() => void)[] = []
  let gauges: Gauges | null = null
  let server: GaugeServer | null = null

  return {
    failed,
    committed: seconds => gauges?.committed(seconds),
    tallied,
    async start({ store, room, links, refused }) {
      const machine = options.machine ?? machineOf(options.dataFolder)
      const alarms = createAlarms(logger, machine.steadyMs)
      const watch = createWatch({ machine, store, alarms, clock, backupAlarmHours, failed })
      ends.push(machine.stop, watch.stop)
      ends.push(startRetention({ room, clock, days, logger, steps: watch.steps, failed }))
      await watch.look()
      if (metricsPort === null) return
      const counts = { tally, links, refused, openLogs: room.openLogs, failures: failures.count }
      gauges = await createGauges({ ...counts, readings: watch.latest })
      server = await serveGauges(gauges.registry, metricsPort)
      ends.push(server.close)
    },
    metricsPort: () => server?.port ?? null,
    end() {
      isEnding = true
      for (const end of ends.splice(0)) end()
    },
  }
}
