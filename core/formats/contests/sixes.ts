import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, MatchSides } from '#core/formats/game-result.ts'
import { partMatch } from '#core/formats/part-match.ts'
import { partsResult } from '#core/formats/parts-lines.ts'
import { scheduledHoles } from '#core/formats/share-holes.ts'
import { sixHolePairs, sixHoleShares } from '#core/formats/six-hole-partners.ts'

/**
 * Four players whose partners change every six holes in order of play, the first of them with the second, the third and the
 * fourth in turn: three better-ball matches, a point to each of the
 * pair that wins and a half to each of a match that is level. Over nine holes partners change every three.
 * Common practice; no body publishes it.
 */
export const sixes: Contest = resultOf

function resultOf(game: SoundGame): GameResult {
  const keys = scheduledHoles(game)
  const length = keys.length / sixHolePairs.length
  const parts = sixHolePairs.map((pairs, six) => {
    const holes = keys.slice(six * length, (six + 1) * length)
    return partMatch(game, sidesOf(game, pairs), { name: 'six', number: six + 1, holes, by: null }, result =>
      sixHoleShares(six, result),
    )
  })
  return partsResult(game, parts)
}

const sidesOf = ({ sides }: SoundGame, [first, second]: (typeof sixHolePairs)[number]): MatchSides => [
  first.flatMap(player => sides[player] ?? []),
  second.flatMap(player => sides[player] ?? []),
]
