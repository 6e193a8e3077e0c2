import { type Delay, delays, type Verdict } from '#shared/messages/verdict.ts'
import type { Dispatch } from '../live/dispatch.ts'

/** Counts since the start of the process. */
export interface Tally {
  readonly stored: number
  readonly later: Readonly<Record<Delay, number>>
}

/** Every push passes here, whatever carried it: what became of each op is counted. */
export function createTally(): { readonly tally: Tally; tallied(dispatch: Dispatch): Dispatch } {
  const later = Object.fromEntries(delays.map(reason => [reason, 0])) as Record<Delay, number>
  const tally = { stored: 0, later }
  const count = (verdict: Verdict) => {
    if (verdict.kind === 'stored') tally.stored++
    if (verdict.kind === 'later') later[verdict.reason]++
  }
  return {
    tally,
    tallied: dispatch => async (caller, event, message) => {
      const answer = await dispatch(caller, event, message)
      if (event === 'push') for (const verdict of (answer as { verdicts?: Verdict[] }).verdicts ?? []) count(verdict)
      return answer
    },
  }
}
