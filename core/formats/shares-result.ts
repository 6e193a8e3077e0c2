import type { HoleKey } from '#core/card/score.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { SideHole } from './game-result.ts'
import type { ShareLine } from './shares.ts'

/**
 * What became of what lies on a hole: shared out; tied, and carried on or claimed by nobody; open while its
 * scores are; or waiting, where its winner is known and the pot is not, because a hole before it is open.
 */
export const shareHoleKinds = ['shared', 'carried', 'unclaimed', 'open', 'waiting'] as const

export interface ShareHole {
  readonly key: HoleKey
  readonly kind: (typeof shareHoleKinds)[number]
  /** Of the sides in order. */
  readonly values: readonly SideHole[]
  /** Of the sides in order, once the hole is shared. */
  readonly shares: readonly Fraction[] | null
  /** What lies on the hole; null while a hole before it leaves that open. */
  readonly pot: number | null
}

/** A game in which each hole is shared out among the sides. */
export interface SharesResult {
  readonly unit: 'skins' | 'points'
  /** In order of play. */
  readonly holes: readonly ShareHole[]
  /** In order of place. */
  readonly lines: readonly ShareLine[]
  /** Skins that wait for the next hole; null while an open hole leaves that open. */
  readonly carried: number | null
  /** Skins of the holes that are decided, which nobody has won and nobody can win any more. */
  readonly unclaimed: number
  /** Skins that were left after the last hole and that all have alike shares of. */
  readonly sharedOut: number
  readonly unsettled: readonly HoleKey[]
  readonly isFinished: boolean
}
