import { unreachable } from '#core/values/assert.ts'
import type { MatchHole } from './hole-by-nets.ts'

export type MatchSide = 'A' | 'B'

/** How a match ended. `by` is the number of holes up, `left` the holes not played, `hole` counts on from the schedule. */
export type MatchResult =
  | { readonly kind: 'won-with-holes-left'; readonly winner: MatchSide; readonly by: number; readonly left: number }
  | { readonly kind: 'won-on-last-hole'; readonly winner: MatchSide; readonly by: number }
  | { readonly kind: 'won-on-extra-hole'; readonly winner: MatchSide; readonly by: 1; readonly hole: number }
  | { readonly kind: 'halved' }
  /** Without holes up and left: given up, won by a disqualification, or agreed. */
  | { readonly kind: 'conceded' | 'disqualified' | 'agreed'; readonly winner: MatchSide }
  | { readonly kind: 'both-disqualified' }

/** Where a match stands after the holes that are known and count. */
export interface MatchState {
  readonly leader: MatchSide | null
  /** Holes up, 0 when level. */
  readonly lead: number
  /** Scheduled holes not known yet, wherever they lie; 0 on extra holes. */
  readonly toPlay: number
  readonly holesPlayed: number
  /** Holes not known although a later hole that counts is. While there are any, the figures of a result may move. */
  readonly gaps: number
  readonly dormie: boolean
  readonly winner: MatchSide | null
  /** `null` while the match is open. */
  readonly result: MatchResult | null
}

/**
 * The state of a match from its holes in order of play. It is won when one side is up by more holes than are still to
 * play, and what stands after that hole is ignored; a hole not known counts as still to play, so a winner named with a
 * gap stays the winner whatever the gap turns out to be. Holes beyond the schedule are extra holes: a list that has any,
 * known or not, leaves a level match open, while a list that ends with the schedule leaves it halved. `adjustment` is
 * holes up for side A by rulings on the match as a whole.
 * Source: Rules of Golf, rule 3.2a; R&A and USGA; 2019 and 2023. Dormie is a trade term, defined until 2019 in rule 2-1.
 */
export function matchStateOf(holes: readonly MatchHole[], scheduledHoles: number, adjustment = 0): MatchState {
  const tally = tallyUntilDecided(holes.slice(0, scheduledHoles), scheduledHoles, adjustment)
  const toPlay = scheduledHoles - tally.played
  const level = tally.up === 0 && toPlay === 0
  if (level && holes.length > scheduledHoles) return extraHolesState(holes.slice(scheduledHoles), scheduledHoles)
  const leader = sideAhead(tally.up)
  const lead = Math.abs(tally.up)
  const result = leader !== null && lead > toPlay ? wonBy(leader, lead, toPlay) : null
  return {
    leader,
    lead,
    toPlay,
    holesPlayed: tally.played,
    gaps: tally.gaps,
    dormie: leader !== null && lead === toPlay,
    winner: result === null ? null : leader,
    result: level ? { kind: 'halved' } : result,
  }
}

/**
 * The score of a match in the notation of the trade: holes up and holes left, holes up alone, or the word for a tie.
 * An extra hole is not part of it; the result has its number. Common practice; no body publishes it.
 */
export function formatMatchResult(result: MatchResult): string {
  switch (result.kind) {
    case 'won-with-holes-left':
      return `${result.by} & ${result.left}`
    case 'won-on-last-hole':
    case 'won-on-extra-hole':
      return `${result.by} up`
    case 'halved':
    case 'conceded':
    case 'disqualified':
    case 'agreed':
      return result.kind
    case 'both-disqualified':
      return 'both disqualified'
    default:
      return unreachable(result)
  }
}

const sideAhead = (up: number): MatchSide | null => (up === 0 ? null : up > 0 ? 'A' : 'B')

const wonBy = (winner: MatchSide, by: number, left: number): MatchResult =>
  left > 0 ? { kind: 'won-with-holes-left', winner, by, left } : { kind: 'won-on-last-hole', winner, by }

interface Tally {
  /** From side A's view. */
  readonly up: number
  readonly played: number
  readonly gaps: number
}

function tallyUntilDecided(holes: readonly MatchHole[], scheduledHoles: number, adjustment: number): Tally {
  let tally: Tally = { up: adjustment, played: 0, gaps: 0 }
  for (const [position, hole] of holes.entries()) {
    if (hole === null) continue
    tally = { up: tally.up + hole, played: tally.played + 1, gaps: position - tally.played }
    if (Math.abs(tally.up) > scheduledHoles - tally.played) break
  }
  return tally
}

/** A match level after its schedule: the first extra hole won ends it, and one not known yet hides those behind it. */
function extraHolesState(extraHoles: readonly MatchHole[], scheduledHoles: number): MatchState {
  const notHalved = extraHoles.findIndex(hole => hole !== 0)
  const halved = notHalved === -1 ? extraHoles.length : notHalved
  const winner = sideAhead(extraHoles[halved] ?? 0)
  const played = scheduledHoles + halved
  const open: MatchState = {
    leader: winner,
    lead: winner === null ? 0 : 1,
    toPlay: 0,
    holesPlayed: winner === null ? played : played + 1,
    gaps: 0,
    dormie: false,
    winner,
    result: null,
  }
  return winner === null ? open : { ...open, result: { kind: 'won-on-extra-hole', winner, by: 1, hole: played + 1 } }
}
