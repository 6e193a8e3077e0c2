import type { HoleKey } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import type { InputHole } from './game-input.ts'
import type { GameMethods } from './game-methods.ts'
import type { HoleNote } from './game-result.ts'
import type { MaximumScore } from './maximum-score.ts'

/** A hole as one ball plays it in one game. */
export interface MeasuredHole {
  readonly par: number
  /** The game's strokes that fall here. */
  readonly strokes: number
  /** Null where the game has none. */
  readonly maximum: MaximumScore | null
}

export type MeasureUnit = 'strokes' | 'points' | 'holes'

/** What a score is worth to a ball on a hole. */
export interface Measure {
  readonly unit: MeasureUnit
  readonly better: 'low' | 'high'
  /** Whether the game's strokes enter. */
  readonly isNet: boolean
  /** Whether the game's maximum score enters. */
  readonly isCapped: boolean
  /** Of gross strokes, penalties included; `null` for no score: a pick-up, a hole not played. Null where that is worth nothing. */
  readonly valueOf: (hole: MeasuredHole, gross: number | null) => number | null
}

/** One of the scores that a ball may have on a hole. */
export interface Worth {
  readonly value: number | null
  /** False for a pick-up, a hole not played and a ball that takes no part. */
  readonly isHoled: boolean
}

/** What a ball may have on a hole: nothing while nobody has written, several while two scores wait for a choice. */
export interface BallHole {
  readonly ball: BallId
  readonly worths: readonly Worth[]
  /** Strokes that make its value level: its par, less what a tee of higher par adds to its strokes. */
  readonly level: number
  readonly notes: readonly HoleNote[]
}

export interface SideOnHole {
  readonly methods: GameMethods
  /** The order of play of the side's first ball. */
  readonly order: readonly InputHole[]
  readonly hole: HoleKey
  /** How many balls the side has. */
  readonly balls: number
}

/** Which balls of a side make its value of a hole: the best so many of them. */
export interface BallRule {
  readonly countOf: (side: SideOnHole) => number
  /** Whether a ball that is disqualified takes its side with it, or the side goes on without it. */
  readonly disqualifiedWith: 'side' | 'ball'
}
