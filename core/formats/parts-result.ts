import type { HoleKey } from '#core/card/score.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { BallId } from '#core/values/ids.ts'
import type { MatchLine } from './game-result.ts'
import type { ShareLine } from './shares.ts'

export const partNames = ['front', 'back', 'overall', 'press', 'six', 'three'] as const
export type PartName = (typeof partNames)[number]

/** A part where each plays for themselves: points so far, and what they may still come to. */
export interface PartTally {
  readonly side: readonly BallId[]
  readonly points: number
  readonly mostPossible: number
}

/** A match of its own inside a game; a point of the game lies on it. */
export interface PartLine {
  readonly name: PartName
  /** From 1, among the parts of its name. */
  readonly number: number
  /** In order of play. */
  readonly holes: readonly HoleKey[]
  /** Who asked for a press; null where it opened by itself, and for every other part. */
  readonly by: BallId | null
  /** Null where each plays for themselves. */
  readonly match: MatchLine | null
  /** Holes up for the match's first side over every hole that is known, those after its end too. */
  readonly up: number
  /** Of the sides in order; empty in a match. */
  readonly tallies: readonly PartTally[]
  /** Of the game's sides in order; null until it is decided. */
  readonly shares: readonly Fraction[] | null
}

/** A game made of parts. */
export interface PartsResult {
  readonly parts: readonly PartLine[]
  /** In order of place. */
  readonly lines: readonly ShareLine[]
  readonly unsettled: readonly HoleKey[]
  readonly isFinished: boolean
}
