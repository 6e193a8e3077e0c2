import { unreachable } from '#core/values/assert.ts'
import { formatMatchResult, type MatchResult, type MatchState } from './match-state.ts'

/**
 * How a match stands, in the notation of the trade: holes up while it is open, "all square" where it is level, and the
 * result once there is one. Whose it is stands beside it. Common practice; no body publishes it.
 */
export function formatMatchState({ result, lead }: Pick<MatchState, 'result' | 'lead'>): string {
  if (result !== null) return formatMatchResult(result)
  return lead === 0 ? 'all square' : `${lead} up`
}

/**
 * The same as one line with what is left to play: "2 up, 4 to play", "dormie 2", "won 3 & 2", "won at the 19th",
 * "all square after 18" where extra holes follow. Common practice; dormie is a trade term, defined until 2019 in rule 2-1.
 */
export function formatMatchLine(state: MatchState): string {
  const { result, lead, toPlay, holesPlayed, dormie } = state
  if (result !== null) return resultLine(result)
  if (dormie) return `dormie ${lead}`
  if (toPlay === 0) return `all square after ${holesPlayed}`
  return `${formatMatchState(state)}, ${toPlay} to play`
}

function resultLine(result: MatchResult): string {
  switch (result.kind) {
    case 'won-with-holes-left':
    case 'won-on-last-hole':
      return `won ${formatMatchResult(result)}`
    case 'won-on-extra-hole':
      return `won at the ${formatOrdinal(result.hole)}`
    case 'conceded':
      return 'won by concession'
    case 'disqualified':
      return 'won by disqualification'
    case 'agreed':
      return 'won by agreement'
    case 'halved':
    case 'both-disqualified':
      return formatMatchResult(result)
    default:
      return unreachable(result)
  }
}

/** "19th", "21st", "112th" */
function formatOrdinal(whole: number): string {
  const isTeen = Math.floor(whole / 10) % 10 === 1
  const ending = isTeen ? undefined : ['th', 'st', 'nd', 'rd'][whole % 10]
  return `${whole}${ending ?? 'th'}`
}
