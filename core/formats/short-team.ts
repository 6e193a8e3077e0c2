import type { HoleKey } from '#core/card/score.ts'
import { must } from '#core/values/assert.ts'
import type { BallId } from '#core/values/ids.ts'
import { ballHoleOf } from './ball-hole.ts'
import type { SoundGame } from './game-input.ts'
import { ballsThere, type Ghost, isShort } from './ghost.ts'
import type { BallHole } from './parts.ts'

/**
 * What counts on a hole beside a short team's own balls: the ghost, which takes the score of the first of the team on the
 * holes 1, 4, 7 of three players, of the second on 2, 5, 8, of the third on 3, 6, 9 and so on; or the card drawn, which
 * counts for its own team as well. A ghost of a ball picked up is picked up.
 */
export function guestsOn(game: SoundGame, side: readonly BallId[], key: HoleKey): readonly BallHole[] {
  const ghost = game.ghosts.get(side)
  if (ghost !== undefined) return [ghostHole(game, ballsThere(game.happenings, side), ghost, key)]
  const drawn = drawnFor(game, side)
  return drawn === null ? [] : [{ ...ballHoleOf(game, drawn, key), notes: [] }]
}

function ghostHole(game: SoundGame, there: readonly BallId[], ghost: Ghost, key: HoleKey): BallHole {
  const hole = Number(key.split('/')[0])
  const ball = must(there[(hole - 1) % there.length], 'somebody of the team is there')
  return { ...ballHoleOf({ ...game, strokes: ghost.strokes }, ball, key), notes: [] }
}

/** The ball whose card was drawn for a short side; null where none was, and for every other side. */
export function drawnFor(game: SoundGame, side: readonly BallId[]): BallId | null {
  const { shortTeam, drawnCard } = game.methods
  if (shortTeam !== 'drawn-card' || drawnCard === null || side.includes(drawnCard)) return null
  return game.balls.has(drawnCard) && isShort(game.happenings, game.sides, side) ? drawnCard : null
}
