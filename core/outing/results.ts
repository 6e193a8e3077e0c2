import type { Three } from '#core/card/level.ts'
import type { HoleKey } from '#core/card/score.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import type { BallId, GameId } from '#core/values/ids.ts'

export type { Three } from '#core/card/level.ts'

/** A ball's card against its own level. */
export interface LevelCard {
  readonly ball: BallId
  /** Level of every hole of the order of play. */
  readonly levels: ReadonlyMap<HoleKey, number>
  readonly threes: readonly Three[]
}

/** Computed when somebody asks, and once: a board has many more cards than a phone shows. */
export interface LevelCards {
  readonly get: (ball: BallId) => LevelCard | undefined
}

/** Everything computed from an outing; the phone, the server, the big screen and the command line show this. */
export interface Results {
  readonly games: ReadonlyMap<GameId, GameResult>
  readonly cards: LevelCards
}
