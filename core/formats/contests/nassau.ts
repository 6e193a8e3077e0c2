import type { HoleKey } from '#core/card/score.ts'
import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, MatchSides } from '#core/formats/game-result.ts'
import { matchHoleOf } from '#core/formats/match-hole.ts'
import type { MatchHole } from '#core/formats/match-state.ts'
import { partMatch } from '#core/formats/part-match.ts'
import { partsResult } from '#core/formats/parts-lines.ts'
import type { PartLine, PartName } from '#core/formats/parts-result.ts'
import { automaticPresses, inOrder } from '#core/formats/presses.ts'
import { holesInPlay, scheduledHoles } from '#core/formats/share-holes.ts'
import { must } from '#core/values/assert.ts'

/**
 * A match in three parts of equal worth: the first nine in order of play, the second nine, all eighteen; over nine holes
 * it is one part. A level part is halved. A press is a match from its first hole to the end of its nine, and worth the same.
 * Common practice; described by a regional association's magazine, 2015, second-hand.
 */
export const nassau: Contest = { strokes: 'difference', resultOf }

function resultOf(game: SoundGame): GameResult {
  const [first, second] = game.sides
  const sides: MatchSides = [must(first, 'two sides'), must(second, 'two sides')]
  const keys = scheduledHoles(game)
  const nines = keys.length > 9 ? [keys.slice(0, 9), keys.slice(9)] : [keys]
  const names: readonly PartName[] = nines.length > 1 ? ['front', 'back'] : ['overall']
  const part = (name: PartName, number: number, holes: readonly HoleKey[]): PartLine =>
    partMatch(game, sides, { name, number, holes })
  const presses = nines.flatMap(nine => pressesOf(game, sides, nine))
  return partsResult(game, [
    ...nines.map((nine, place) => part(must(names[place], 'a nine has a name'), 1, nine)),
    ...(nines.length > 1 ? [part('overall', 1, keys)] : []),
    ...presses.map((holes, place) => part('press', place + 1, holes)),
  ])
}

/** The holes of each press of a nine. */
function pressesOf(game: SoundGame, sides: MatchSides, nine: readonly HoleKey[]): HoleKey[][] {
  const inPlay = new Set(holesInPlay(game))
  const holes = nine.filter(key => inPlay.has(key))
  switch (must(game.methods.presses, 'how presses open is set')) {
    case 'none':
      return []
    case 'at-two-down':
      return automaticPresses(holes.map(key => known(game, sides, key))).map(place => holes.slice(place))
    case 'by-hand': {
      const places = game.happenings.presses.map(({ from }) => nine.indexOf(from)).filter(place => place >= 0)
      return inOrder(places).map(place => nine.slice(place))
    }
  }
}

function known(game: SoundGame, sides: MatchSides, key: HoleKey): MatchHole {
  const { result } = matchHoleOf(game, sides, key)
  return typeof result === 'number' ? result : null
}
