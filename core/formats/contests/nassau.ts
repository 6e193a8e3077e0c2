import type { HoleKey } from '#core/card/score.ts'
import type { Contest, SoundGame } from '#core/formats/game-input.ts'
import type { GameResult, MatchSides } from '#core/formats/game-result.ts'
import type { MatchHole } from '#core/formats/hole-by-nets.ts'
import { matchHoleOf } from '#core/formats/match-hole.ts'
import { partMatch } from '#core/formats/part-match.ts'
import { partsResult } from '#core/formats/parts-lines.ts'
import type { PartLine, PartName } from '#core/formats/parts-result.ts'
import { automaticPresses } from '#core/formats/presses.ts'
import { scheduledHoles } from '#core/formats/share-holes.ts'
import { isOutOfPlay } from '#core/formats/side-hole.ts'
import { must, unreachable } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'

/**
 * A match in three parts of equal worth: the first nine in order of play, the second nine, all eighteen; over nine holes
 * it is one part. A level part is halved. A press is a match from its first hole to the end of its nine, and worth the same.
 * Common practice; described by a regional association's magazine, 2015, second-hand.
 */
export const nassau: Contest = resultOf

interface PressOpened {
  readonly holes: readonly HoleKey[]
  readonly by: BallId | null
}

function resultOf(game: SoundGame): GameResult {
  const [first, second] = game.sides
  const sides: MatchSides = [must(first, 'two sides'), must(second, 'two sides')]
  const keys = scheduledHoles(game)
  const nines = keys.length > 9 ? [keys.slice(0, 9), keys.slice(9)] : [keys]
  const names: readonly PartName[] = nines.length > 1 ? ['front', 'back'] : ['overall']
  const part = (name: PartName, holes: readonly HoleKey[]): PartLine =>
    partMatch(game, sides, { name, number: 1, holes, by: null })
  const presses = nines.flatMap(nine => pressesOf(game, sides, nine))
  return partsResult(game, [
    ...nines.map((nine, place) => part(must(names[place], 'a nine has a name'), nine)),
    ...(nines.length > 1 ? [part('overall', keys)] : []),
    ...presses.map((press, place) => partMatch(game, sides, { name: 'press', number: place + 1, ...press })),
  ])
}

/** The presses of a nine, in order of play. */
function pressesOf(game: SoundGame, sides: MatchSides, nine: readonly HoleKey[]): PressOpened[] {
  const method = must(game.methods.presses, 'how presses open is set')
  switch (method) {
    case 'none':
      return []
    case 'at-two-down': {
      const holes = nine.filter(key => !isOutOfPlay(game, key))
      const known = holes.map(key => knownHole(game, sides, key))
      return automaticPresses(known).map(place => ({ holes: holes.slice(place), by: null }))
    }
    case 'by-hand':
      return nine.flatMap((key, place) => {
        const asked = game.happenings.presses.find(({ from }) => from === key)
        return asked === undefined ? [] : [{ holes: nine.slice(place), by: asked.by }]
      })
    default:
      return unreachable(method)
  }
}

function knownHole(game: SoundGame, sides: MatchSides, key: HoleKey): MatchHole {
  const { result } = matchHoleOf(game, sides, key)
  return typeof result === 'number' ? result : null
}
