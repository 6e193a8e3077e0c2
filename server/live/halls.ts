import type { LogId } from '#core/values/ids.ts'
import type { Store } from '../store/store.ts'
import type { Clock } from './clock.ts'
import { createHall, type Hall, type News } from './hall.ts'
import type { TellMany } from './link.ts'

/** The halls of the logs that somebody follows. */
export interface Halls {
  /** Null when the store does not hold the log. */
  open(log: LogId): Promise<Hall | null>
  find(log: LogId): Hall | null
  note(log: LogId, news: News): void
  /** Forgets a hall that nobody is in. */
  tidy(log: LogId): void
  all(): readonly Hall[]
}

interface Opening {
  hall: Hall | null
  readonly early: News[]
  readonly opened: Promise<Hall | null>
}

export function createHalls(store: Store, clock: Clock, tellMany: TellMany): Halls {
  const openings = new Map<LogId, Opening>()

  const open = (log: LogId): Opening => {
    // What is stored while the ends are being read must not fall between them and the first note.
    const early: News[] = []
    const opening: Opening = { hall: null, early, opened: store.endsOf(log).then(made, failed) }
    function made(ends: Awaited<ReturnType<Store['endsOf']>>): Hall | null {
      if (ends === null) {
        openings.delete(log)
        return null
      }
      const hall = createHall(ends, clock, tellMany)
      for (const news of early) hall.note(news)
      opening.hall = hall
      return hall
    }
    function failed(error: unknown): never {
      openings.delete(log)
      throw error
    }
    openings.set(log, opening)
    return opening
  }

  return {
    open: log => (openings.get(log) ?? open(log)).opened,
    find: log => openings.get(log)?.hall ?? null,
    note(log, news) {
      const opening = openings.get(log)
      if (opening?.hall) opening.hall.note(news)
      else opening?.early.push(news)
    },
    tidy(log) {
      const hall = openings.get(log)?.hall
      if (!hall || hall.links().length > 0) return
      hall.close()
      openings.delete(log)
    },
    all: () => [...openings.values()].flatMap(({ hall }) => (hall ? [hall] : [])),
  }
}
