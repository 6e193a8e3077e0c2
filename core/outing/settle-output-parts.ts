import type { PartLine } from '#core/formats/parts-result.ts'
import type { ShareHole, SharesResult } from '#core/formats/shares-result.ts'
import type { SettledHole, SettledMatch, SettledSideHole } from './settle-output-games.ts'

export interface SettledShareLine {
  readonly side: readonly string[]
  readonly names: readonly string[]
  /** Decimal text of at most six places. */
  readonly total: string
  readonly place: number | null
  readonly isTied: boolean
}

export interface SettledShareHole extends SettledHole {
  readonly kind: ShareHole['kind']
  readonly pot: number | null
  /** Of the sides in order, decimal text; null while open. */
  readonly shares: readonly string[] | null
  readonly values: readonly SettledSideHole[]
}

/** Every hole shared out: skins, nine points, split sixes. */
export interface SettledShares {
  readonly unit: SharesResult['unit']
  readonly holes: readonly SettledShareHole[]
  readonly lines: readonly SettledShareLine[]
  readonly carried: number | null
  readonly unclaimed: number
  /** Skins left after the last hole, of which all have alike shares. */
  readonly sharedOut: number
  readonly unsettled: readonly SettledHole[]
  readonly isFinished: boolean
}

export interface SettledPart {
  readonly name: PartLine['name']
  readonly number: number
  readonly holes: readonly SettledHole[]
  /** The ball whose side asked for a press; null where it opened by itself, and for every other part. */
  readonly by: string | null
  /** Null where each plays for themselves. */
  readonly match: SettledMatch | null
  /** Holes up for the match's first side, over every hole that is known. */
  readonly up: number
  /** Points so far where each plays for themselves, and the most they may come to. */
  readonly tallies: readonly {
    readonly side: readonly string[]
    readonly points: number
    readonly mostPossible: number
  }[]
  /** Of the game's sides in order, decimal text; null until the part is decided. */
  readonly shares: readonly string[] | null
}

/** A game of several matches, a point on each: Nassau, sixes, six threes. */
export interface SettledParts {
  readonly parts: readonly SettledPart[]
  readonly lines: readonly SettledShareLine[]
  readonly unsettled: readonly SettledHole[]
  readonly isFinished: boolean
}
