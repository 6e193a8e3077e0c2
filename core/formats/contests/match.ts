import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, MatchLine, MatchSides } from '#core/formats/game-result.ts'
import { type MatchHoles, matchLineOf } from '#core/formats/match-line.ts'
import { lossOf } from '#core/formats/match-sides.ts'

/** Hole by hole, every side against every other; strokes are the difference from the lowest of all. */
export const match: Contest = { strokes: 'difference', resultOf: game => resultOf(game, game => game) }

/**
 * The same with a difference of its own in each match: each player of three plays two separate matches with one ball.
 * Source: Rules of Golf, rule 21.4; R&A and USGA; 2023. The one difference from the lowest instead is common practice.
 */
export const matchOfEachPair: Contest = {
  strokes: 'difference',
  resultOf: game => resultOf(game, (of, sides) => ({ ...of, strokes: of.strokesBetween(sides.flat()) })),
}

function resultOf(game: SoundGame, gameOf: (game: SoundGame, sides: MatchSides) => SoundGame): GameResult {
  const matches = pairsOf(game.sides).map(sides => wholeMatch(gameOf(game, sides), sides))
  return { kind: 'match', game: game.game, format: game.format, strokes: game.strokes, matches }
}

const pairsOf = (sides: SoundGame['sides']): MatchSides[] =>
  sides.flatMap((one, place) => sides.slice(place + 1).map(other => [one, other] as const))

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
