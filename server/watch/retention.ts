import type { Logger } from 'pino'
import type { Clock } from '../live/clock.ts'
import type { Room } from '../live/room.ts'

export const retainEveryMs = 3_600_000
const dayMs = 86_400_000

export interface RetentionOptions {
  readonly room: Pick<Room, 'deleteIdle'>
  readonly clock: Pick<Clock, 'now' | 'after'>
  /** An outing in which nothing was stored for so long is deleted; 0: none ever is. */
  readonly days: number
  readonly logger: Pick<Logger, 'warn'>
  /** How often the clock has been put: by a wrong clock nothing is deleted. */
  readonly steps: () => number
  readonly failed: (error: unknown) => void
}

/** Deletes old outings, from an hour after the start on and hourly. Phones keep what they hold. Returns what ends it. */
export function startRetention({ room, clock, days, logger, steps, failed }: RetentionOptions): () => void {
  if (days === 0) return () => {}
  let callOff = () => {}
  let stepsBefore = steps()

  const round = async () => {
    const stepsNow = steps()
    const isClockSteady = stepsNow === stepsBefore
    stepsBefore = stepsNow
    if (!isClockSteady) return
    for (const log of await room.deleteIdle(clock.now() - days * dayMs)) {
      logger.warn({ log }, `Deleted an outing in which nothing was written for ${days} days (RETENTION_DAYS).`)
    }
  }
  const plan = () => {
    callOff = clock.after(retainEveryMs, () => void round().catch(failed).finally(plan))
  }
  plan()
  return () => callOff()
}
