import type { FormatName } from '#core/formats/format-names.ts'
import { formatTable } from '#core/formats/table.ts'
import type { BallId, GameId, GroupId } from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { FactKind, FactValues } from './facts.ts'
import { makeKey } from './keys.ts'

/** The methods of a game, each by its name. */
export interface GameSettings {
  readonly allowance: FactValues['gameAllowance']
  readonly rounding: FactValues['gameRounding']
  readonly nineHoleIndex: FactValues['gameNineHoleIndex']
  readonly matchStrokes: FactValues['gameMatchStrokes']
}

/**
 * What a new game proposes, for people to see and change: the format's recommended allowance and the methods of the
 * Rules of Handicapping 2024. They are written into the game's facts; the fold fills in nothing.
 */
export const defaultGameSettings = (format: FormatName): GameSettings => ({
  allowance: formatTable[format].allowance.percent,
  rounding: 'course-handicap-unrounded',
  nineHoleIndex: 'half-index-unrounded',
  matchStrokes: 'from-lowest-playing-handicap',
})

export interface NewGame extends GameSettings {
  readonly id: GameId
  /** Null for a game of the whole outing. */
  readonly group: GroupId | null
  readonly format: FormatName
  readonly sides: readonly (readonly BallId[])[]
}

/** A game with every setting named. */
export function gameFacts(game: NewGame): { readonly key: string; readonly value: Json }[] {
  const at = game.group === null ? { game: game.id } : { group: game.group, game: game.id }
  const values: readonly (readonly [FactKind, Json])[] = [
    ['gameFormat', game.format],
    ['gameSides', game.sides],
    ['gameAllowance', game.allowance],
    ['gameRounding', game.rounding],
    ['gameNineHoleIndex', game.nineHoleIndex],
    ['gameMatchStrokes', game.matchStrokes],
  ]
  return values.map(([kind, value]) => ({ key: makeKey(kind, at), value }))
}
