import type { SoundGame } from './game-input.ts'
import type { GameResult } from './game-result.ts'
import type { PartLine } from './parts-result.ts'
import { scheduledHoles, unsettledOf } from './share-holes.ts'
import { shareLines } from './shares.ts'

/** A game's parts with the points that its sides make of them. */
export const partsResult = (game: SoundGame, parts: readonly PartLine[]): GameResult => ({
  kind: 'parts',
  game: game.game,
  format: game.format,
  strokes: game.strokes,
  parts,
  lines: shareLines(
    game.sides,
    parts.map(({ shares }) => shares),
  ),
  unsettled: unsettledOf(game, scheduledHoles(game)),
  isFinished: parts.every(({ shares }) => shares !== null),
})
