import type { HoleKey } from '#core/card/score.ts'
import type { SoundGame } from './game-input.ts'
import type { MatchHoleLine, MatchLine, MatchSides, VoidConcession } from './game-result.ts'
import type { MatchHole } from './hole-by-nets.ts'
import { endedMatch } from './match-ending.ts'
import { matchHoleOf } from './match-hole.ts'
import { lossOf } from './match-sides.ts'
import { type MatchState, matchStateOf } from './match-state.ts'
import { isUnsettled } from './side-hole.ts'

/** The holes of a match in order of play, and those that follow where it is level. */
export interface MatchHoles {
  readonly round: readonly HoleKey[]
  readonly extra: readonly HoleKey[]
  /** Holes up for the first side by rulings on the match as a whole. */
  readonly adjustment: number
  /** True for a part of a game, which has no agreed result of its own. */
  readonly isPart: boolean
}

/** Two sides over some holes. Where the match stands level after them, extra holes are part of it up to the first won. */
export function matchLineOf(
  game: SoundGame,
  sides: MatchSides,
  { round, extra, adjustment, isPart }: MatchHoles,
): MatchLine {
  const inRound = round.map(key => matchHoleOf(game, sides, key))
  const scheduled = inRound.filter(counts).length
  const stateOf = (holes: readonly MatchHoleLine[]): MatchState =>
    matchStateOf(holes.filter(counts).map(known), scheduled, adjustment)
  const more = isLevel(stateOf(inRound)) ? untilWon(extra.map(key => matchHoleOf(game, sides, key))) : []
  const holes = [...inRound, ...more]
  const ended = endedMatch(game, sides, {
    keys: holes.map(({ key }) => key),
    isPart,
    stateThrough: count => stateOf(holes.map((hole, place) => (place < count ? hole : unplayed(hole)))),
  })
  return {
    sides,
    holes,
    strokes: new Map([...game.strokes].filter(([ball]) => sides.flat().includes(ball))),
    ...ended,
    unsettled: holes.filter(hole => isOpenTwice(game, sides, hole)).map(({ key }) => key),
    voids: holes.flatMap(hole => voidsOf(game, sides, hole)),
  }
}

/** A hole out of play that counts nothing makes the match one shorter. */
const counts = ({ result, reason }: MatchHoleLine): boolean => reason !== 'out-of-play' || result !== null

const known = ({ result }: MatchHoleLine): MatchHole => (typeof result === 'number' ? result : null)

/** Not gone yet; a hole out of play stays so. */
const unplayed = (hole: MatchHoleLine): MatchHoleLine =>
  hole.reason === 'out-of-play' ? hole : { ...hole, result: null }

const isLevel = ({ lead, toPlay }: MatchState): boolean => lead === 0 && toPlay === 0

function untilWon(holes: readonly MatchHoleLine[]): MatchHoleLine[] {
  const counting = holes.filter(counts)
  const last = counting.findIndex(({ result }) => result !== 0)
  return last === -1 ? counting : counting.slice(0, last + 1)
}

const isOpenTwice = (game: SoundGame, sides: MatchSides, { key, result }: MatchHoleLine): boolean =>
  (typeof result === 'object' && result !== null) || sides.some(side => isUnsettled(game, side, key))

/** Concessions of the hole that it was not decided by, and that would have made something else of it. */
function voidsOf(
  { happenings }: SoundGame,
  sides: MatchSides,
  { key, result, reason }: MatchHoleLine,
): VoidConcession[] {
  if (reason === 'conceded' || typeof result !== 'number') return []
  return happenings.holeConcessions.flatMap(({ hole, by, to }) => {
    const outcome = lossOf(sides, by, to)
    if (hole !== key || outcome === null || outcome === result) return []
    return [{ hole: key, by, reason: reason === 'agreed' ? 'agreed-otherwise' : 'hole-already-decided' }]
  })
}
