import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { MatchLine, MatchSides } from '#core/formats/game-result.ts'
import { type MatchHoles, matchLineOf } from '#core/formats/match-line.ts'
import { matchPairsOf } from '#core/formats/match-pairs.ts'
import { lossOf } from '#core/formats/match-sides.ts'

/** Hole by hole, every side against every other. */
export const match: Contest = game => ({
  kind: 'match',
  game: game.game,
  format: game.format,
  strokes: game.strokes,
  matches: matchPairsOf(game).map(({ sides, strokes }) => wholeMatch({ ...game, strokes }, sides)),
})

const wholeMatch = (game: SoundGame, sides: MatchSides): MatchLine =>
  matchLineOf(game, sides, { ...holesOf(game, sides), adjustment: holesDeducted(game, sides), isPart: false })

/** The order of play of the first ball's group is the match's. */
function holesOf(game: SoundGame, [[first]]: MatchSides): Pick<MatchHoles, 'round' | 'extra'> {
  const order = first === undefined ? [] : (game.balls.get(first)?.order ?? [])
  const keys = (isScheduled: boolean) => order.filter(hole => hole.isScheduled === isScheduled).map(({ key }) => key)
  return { round: keys(true), extra: keys(false) }
}

/**
 * Holes up for the first side by rulings that take a hole off the match as a whole, as for too many clubs.
 * Source: Rules of Golf, rule 4.1b(4); R&A and USGA; 2019 and 2023, from memory.
 */
const holesDeducted = ({ happenings }: SoundGame, sides: MatchSides): number =>
  happenings.penalties
    .filter(({ hole, holeLost }) => holeLost && hole === null)
    .reduce((up, { ball }) => up + (lossOf(sides, ball, null) ?? 0), 0)
