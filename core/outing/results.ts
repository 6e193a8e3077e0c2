import type { HoleKey } from '#core/card/score.ts'
import type { GameResult } from '#core/formats/game-result.ts'
import type { BallId, GameId } from '#core/values/ids.ts'

/** Three holes in order of play. */
export interface Three {
  readonly number: number
  readonly holes: readonly HoleKey[]
  readonly par: number
  /** Par plus strokes received in the main game. */
  readonly level: number
  /** Strokes over level of the holes that count so far, a pick-up as two over; null before the first. */
  readonly overLevel: number | null
  /** Every hole is settled. */
  readonly isClosed: boolean
}

/** A ball's card against its own level. */
export interface LevelCard {
  readonly ball: BallId
  /** Level of every hole of the order of play. */
  readonly levels: ReadonlyMap<HoleKey, number>
  readonly threes: readonly Three[]
}

/** Everything computed from an outing; the phone, the server, the big screen and the command line show this. */
export interface Results {
  readonly games: ReadonlyMap<GameId, GameResult>
  readonly cards: ReadonlyMap<BallId, LevelCard>
}
