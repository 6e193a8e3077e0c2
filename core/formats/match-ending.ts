import type { HoleKey } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SoundGame } from './game-input.ts'
import type { MatchEnding, MatchSides } from './game-result.ts'
import type { AgreedResult } from './happenings.ts'
import { agreedOutcome, lossOf, type Outcome } from './match-sides.ts'
import type { MatchResult, MatchSide, MatchState } from './match-state.ts'
import { hasLeft, isDisqualified } from './taking-part.ts'

/** A match as it stands in the end, and what decided it; null while it is open. */
export interface EndedMatch {
  readonly state: MatchState
  readonly decidedBy: MatchEnding | null
}

/** A match's holes, and its state after the first so many of them. */
export interface PlayedMatch {
  readonly keys: readonly HoleKey[]
  readonly isPart: boolean
  readonly stateThrough: (holes: number) => MatchState
}

/**
 * What ends a match beside its holes: a disqualification, then what the sides agreed, then a concession, then a side that
 * is gone. Otherwise the holes do. A part of a game is given up only where its holes have not decided it, and what the
 * sides agreed of the whole game says nothing of it.
 * Source: Rules of Golf, rules 3.2a, 3.2b and 3.2d; R&A and USGA; 2019 and 2023. A side that leaves gives up: common
 * practice.
 */
export function endedMatch(game: SoundGame, sides: MatchSides, played: PlayedMatch): EndedMatch {
  const state = played.stateThrough(played.keys.length)
  const byPlay: EndedMatch = { state, decidedBy: state.result === null ? null : 'play' }
  const isOver = played.isPart && state.result !== null
  return (
    disqualified(game, sides, state) ??
    (played.isPart ? null : agreedMatch(game, sides, state)) ??
    (isOver ? null : concededMatch(game, sides, state)) ??
    abandoned(game, sides, played) ??
    byPlay
  )
}

const over = (state: MatchState, result: MatchResult, winner: MatchSide | null): MatchState => ({
  ...state,
  dormie: false,
  winner,
  result,
})

const winnerOf = (outcome: 1 | -1): MatchSide => (outcome === 1 ? 'A' : 'B')

function disqualified(game: SoundGame, sides: MatchSides, state: MatchState): EndedMatch | null {
  const [isFirstOut, isSecondOut] = sides.map(side => side.some(ball => isDisqualified(game, ball)))
  if (!isFirstOut && !isSecondOut) return null
  if (isFirstOut && isSecondOut) {
    return { state: over(state, { kind: 'both-disqualified' }, null), decidedBy: 'disqualified' }
  }
  const winner = isFirstOut ? 'B' : 'A'
  return { state: over(state, { kind: 'disqualified', winner }, winner), decidedBy: 'disqualified' }
}

/** Results that the sides do not tell alike are not agreed, and none of them stands. */
function agreedMatch({ happenings }: SoundGame, sides: MatchSides, state: MatchState): EndedMatch | null {
  const found = happenings.agreedResults.flatMap(each => {
    const outcome = agreedOutcome(sides, each)
    return outcome === null ? [] : [agreedState(each, outcome, state)]
  })
  const told = new Set(found.map(({ result }) => JSON.stringify(result)))
  const [first] = found
  return first === undefined || told.size > 1 ? null : { state: first, decidedBy: 'agreed' }
}

function agreedState({ by, left }: AgreedResult, outcome: Outcome, state: MatchState): MatchState {
  const holes = state.holesPlayed + state.toPlay
  const figures = { leader: null, lead: 0, toPlay: left, holesPlayed: Math.max(0, holes - left), gaps: 0 }
  if (outcome === 0) return over({ ...state, ...figures }, { kind: 'halved' }, null)
  const winner = winnerOf(outcome)
  // Agreed without holes up, as after a lot: there is a winner and no score.
  if (by === 0) return over(state, { kind: 'agreed', winner }, winner)
  const ahead = { ...state, ...figures, leader: winner, lead: by }
  const result: MatchResult =
    left > 0 ? { kind: 'won-with-holes-left', winner, by, left } : { kind: 'won-on-last-hole', winner, by }
  return over(ahead, result, winner)
}

/** Both giving up to each other is a dispute: neither concession stands. */
function concededMatch({ happenings }: SoundGame, sides: MatchSides, state: MatchState): EndedMatch | null {
  const outcomes = new Set(happenings.matchConcessions.map(({ by, to }) => lossOf(sides, by, to)))
  outcomes.delete(null)
  const [outcome] = outcomes
  return outcomes.size === 1 && outcome ? concession(state, outcome) : null
}

function concession(state: MatchState, outcome: 1 | -1): EndedMatch {
  const winner = winnerOf(outcome)
  return { state: over(state, { kind: 'conceded', winner }, winner), decidedBy: 'conceded' }
}

/** The side that is gone first gives up, unless the match was over by then. */
function abandoned(game: SoundGame, sides: MatchSides, { keys, stateThrough }: PlayedMatch): EndedMatch | null {
  const [first, second] = [leftAt(game, sides[0], keys), leftAt(game, sides[1], keys)]
  if (first === second) return null
  const state = stateThrough(Math.min(first, second))
  return state.result === null ? concession(state, first < second ? -1 : 1) : null
}

/** The place of the first hole that nobody of the side plays any more; past the last where somebody stays. */
function leftAt(game: SoundGame, side: readonly BallId[], keys: readonly HoleKey[]): number {
  const place = keys.findIndex(key => side.every(ball => hasLeft(game, ball, key)))
  return place === -1 ? keys.length : place
}
