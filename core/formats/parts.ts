import type { HoleScore } from '#core/card/score.ts'
import type { BallId } from '#core/values/ids.ts'
import type { SideHole } from './game-result.ts'

/** What a score is worth to a ball on a hole; null is no score: a pick-up, a hole not played. */
export interface Measure {
  readonly unit: 'strokes' | 'points'
  readonly better: 'low' | 'high'
  /** Whether the game's strokes enter. */
  readonly isNet: boolean
  readonly valueOf: (hole: { readonly par: number; readonly strokes: number }, score: HoleScore) => number | null
}

/** What a ball may have on a hole: nothing while nobody has written, several while two scores wait for a choice. */
export interface BallHole {
  readonly ball: BallId
  readonly values: readonly (number | null)[]
}

/** How the balls of a side make one value of a hole. */
export interface BallRule {
  readonly valueOf: (balls: readonly BallHole[], better: Measure['better']) => SideHole
}
