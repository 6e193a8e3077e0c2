import { backOffMs, type Clock } from './clock.ts'
import type { Link, Question } from './link.ts'

/** How long an answer may take before what was asked counts as perhaps never heard. */
export const askLimitMs = 8_000
/** Without an answer for so long the foot no longer says that the link is live. */
const patienceMs = 3_000

/** One link's connections, one after the other. What belongs to an earlier one never touches the present. */
export interface Contact {
  readonly isUp: () => boolean
  /** An answer is overdue. */
  readonly isSlow: () => boolean
  /** True when the connection is a new one. */
  readonly came: () => boolean
  readonly went: () => void
  /** The answer, or null when none came: what was asked may have been done all the same. */
  readonly ask: (question: Question, message: object, limitMs?: number) => Promise<unknown>
  /** Runs later if this same connection still stands. */
  readonly later: (delayMs: number, run: () => void) => void
  /** Likewise, after a pause that grows until something succeeds. */
  readonly retry: (run: () => void) => void
  readonly succeeded: () => void
}

export interface ContactParts {
  readonly link: Link
  readonly clock: Clock
  readonly changed: () => void
  /** The link stood and did not carry: a new one is the only cure. */
  readonly lost: () => void
}

export function createContact({ link, clock, changed, lost }: ContactParts): Contact {
  let isUp = false
  let isSlow = false
  let failures = 0
  let connection = 0

  const later = (delayMs: number, run: () => void): void => {
    const at = connection
    clock.after(delayMs, () => {
      if (at === connection) run()
    })
  }

  const retry = (run: () => void): void => {
    failures++
    later(backOffMs(failures, clock.random()), run)
  }

  const setSlow = (slow: boolean): void => {
    if (isSlow === slow) return
    isSlow = slow
    changed()
  }

  const went = (): void => {
    isUp = false
    connection++
  }

  const ask = async (question: Question, message: object, limitMs = askLimitMs): Promise<unknown> => {
    const at = connection
    const callOff = clock.after(patienceMs, () => {
      if (at === connection) setSlow(true)
    })
    try {
      const answer = await link.ask(question, message, limitMs)
      if (at !== connection) return null
      setSlow(false)
      return answer
    } catch {
      if (at === connection && isUp) {
        went()
        lost()
        retry(link.renew)
      }
      return null
    } finally {
      callOff()
    }
  }

  return {
    isUp: () => isUp,
    isSlow: () => isSlow,
    came: () => {
      const isNew = !isUp
      isUp = true
      isSlow = false
      if (isNew) connection++
      return isNew
    },
    went,
    ask,
    later,
    retry,
    succeeded: () => {
      failures = 0
    },
  }
}
