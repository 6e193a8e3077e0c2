import { type Fraction, fraction, zero } from '#core/values/fraction.ts'
import type { SoundGame } from './game-input.ts'
import type { MatchLine, MatchSides } from './game-result.ts'
import { matchLineOf } from './match-line.ts'
import type { PartLine } from './parts-result.ts'
import { isOutOfPlay } from './side-hole.ts'

/** A part that two sides play as a match, without extra holes; `sharesOf` what its result gives the game's sides. */
export function partMatch(
  game: SoundGame,
  sides: MatchSides,
  part: Pick<PartLine, 'name' | 'number' | 'holes' | 'by'>,
  sharesOf: (result: 1 | 0 | -1) => readonly Fraction[] = pointOfTwo,
): PartLine {
  const match = matchLineOf(game, sides, { round: part.holes, extra: [], adjustment: 0, isPart: true })
  const result = resultOf(match)
  const shares = result === null ? null : sharesOf(result)
  // Where none of its holes is played nobody has halved anything.
  const isPlayed = part.holes.some(key => !isOutOfPlay(game, key))
  return { ...part, match, up: holesUp(match), tallies: [], shares: isPlayed ? shares : sharesOf(0).map(() => zero) }
}

/** A point for the part, half each when it is level. */
export const pointOfTwo = (result: 1 | 0 | -1): Fraction[] => [fraction(1 + result, 2), fraction(1 - result, 2)]

/** Null while the match is open; a match that both have lost is nobody's, and halved here. */
function resultOf({ state }: MatchLine): 1 | 0 | -1 | null {
  if (state.result === null) return null
  return state.winner === null ? 0 : state.winner === 'A' ? 1 : -1
}

const holesUp = ({ holes }: MatchLine): number =>
  holes.reduce((up, { result }) => up + (typeof result === 'number' ? result : 0), 0)
