import type { Card } from '#core/card/card.ts'
import type { HoleKey } from '#core/card/score.ts'
import type { Ratings } from '#core/handicap/course-handicap.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { BallId, GameId, PlayerId } from '#core/values/ids.ts'
import { rememberBy } from '#core/values/memo.ts'
import type { ContestName } from './contest-names.ts'
import type { FormatName } from './format-names.ts'
import type { GameMethods } from './game-methods.ts'
import type { BallStrokes, GameGap, GameResult } from './game-result.ts'
import type { Ghost } from './ghost.ts'
import type { Happenings } from './happenings.ts'
import type { BallRule, Measure } from './parts.ts'

/** A hole of a ball's order of play, from its tee. */
export interface InputHole {
  readonly key: HoleKey
  readonly hole: number
  readonly lap: number
  readonly par: number
  readonly index: number
  /** False for an extra hole. */
  readonly isScheduled: boolean
}

/** The holes of the round, without the extra ones. */
export const scheduledOf = rememberBy((order: readonly InputHole[]): readonly InputHole[] =>
  order.filter(({ isScheduled }) => isScheduled),
)

/** What a ball plays off: a course handicap, unrounded; strokes agreed for every game; or why nobody knows. */
export type BallHandicap =
  | { readonly kind: 'course'; readonly exact: Fraction }
  | { readonly kind: 'plain'; readonly strokes: number }
  | { readonly kind: 'gap'; readonly code: GameGap['code'] }

export interface PlayerHandicap {
  readonly player: PlayerId
  readonly handicap: BallHandicap
  /** Par of the holes of the round from the player's tee; null while unknown. */
  readonly parOfRound: number | null
  /** What the round is rated at from there; null while unknown. */
  readonly ratings: Ratings | null
}

export interface InputBall {
  /** In order of play, with the extra holes at the end; null while the course lacks one of them. */
  readonly holes: readonly InputHole[] | null
  readonly card: Card
  /** Of the ball's one player, or of each of them in the order of the ball. */
  readonly handicaps: readonly PlayerHandicap[]
}

/** A game with all that it needs and nothing of the outing around it. */
export interface GameInput {
  readonly game: GameId
  readonly format: FormatName | null
  readonly sides: readonly (readonly BallId[])[] | null
  readonly methods: GameMethods
  readonly balls: ReadonlyMap<BallId, InputBall>
  readonly happenings: Happenings
}

/** A game in which nothing is missing any more. */
export interface SoundGame {
  readonly game: GameId
  readonly format: FormatName
  readonly ballRule: BallRule
  readonly measure: Measure
  readonly contest: ContestName
  readonly sides: readonly (readonly BallId[])[]
  readonly balls: ReadonlyMap<BallId, SoundBall>
  readonly strokes: ReadonlyMap<BallId, BallStrokes>
  /** The strokes given where these balls alone make a match. */
  readonly strokesBetween: (balls: readonly BallId[]) => ReadonlyMap<BallId, BallStrokes>
  /** Strokes that a tee's par adds, by hole; only balls that have any. */
  readonly teePar: ReadonlyMap<BallId, ReadonlyMap<HoleKey, number>>
  readonly methods: GameMethods
  readonly happenings: Happenings
  /** Of sides that are one ball short, by the very list of their balls. */
  readonly ghosts: ReadonlyMap<readonly BallId[], Ghost>
  /** Balls whose sides are left out, and why. */
  readonly gaps: readonly GameGap[]
}

export interface SoundBall {
  readonly order: readonly InputHole[]
  readonly holes: ReadonlyMap<HoleKey, InputHole>
  readonly card: Card
  readonly players: readonly PlayerId[]
}

/** How the sides' values make a result. */
export type Contest = (game: SoundGame, earlier: Earlier | null) => GameResult

/** What the same game came to before these balls' scores changed: what they do not enter need not be made again. */
export interface Earlier {
  readonly result: GameResult
  readonly changed: ReadonlySet<BallId>
}
