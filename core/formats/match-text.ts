import { formatMatchResult, type MatchState } from './match-state.ts'

/**
 * How a match stands, in the notation of the trade: holes up while it is open, "all square" where it is level, and the
 * result once there is one. Whose it is stands beside it. Common practice; no body publishes it.
 */
export function formatMatchState({ result, lead }: Pick<MatchState, 'result' | 'lead'>): string {
  if (result !== null) return formatMatchResult(result)
  return lead === 0 ? 'all square' : `${lead} up`
}
