import { unreachable } from '#core/values/assert.ts'

/** Why a score was returned lower than made. */
export const lowScoreReasons = ['unknown-penalty-stroke', 'told-or-unsure-of-penalty', 'other'] as const
export type LowScoreReason = (typeof lowScoreReasons)[number]

/** A hole of a card returned in stroke play, held against what was made. */
export interface ReturnedScore {
  readonly returned: number | null
  readonly actual: number
  readonly reason: LowScoreReason
  /** Whether it was found before the competition closed. */
  readonly isBeforeClose: boolean
}

export type HoleScoreRuling =
  | { readonly code: 'stands'; readonly score: number }
  | { readonly code: 'committee-adds-penalty'; readonly score: number }
  | { readonly code: 'disqualified' }

/**
 * A wrong hole score in regular stroke play: too high stands, none or too low disqualifies, unless penalty strokes are
 * missing that the player did not know of: the committee adds them before the close, after it the score stands.
 * Source: Rules of Golf, rules 3.3b(3) and 20.2e(2); R&A and USGA; 2019 and 2023. That a player told of a possible penalty,
 * or unsure of one, loses the exception: from memory.
 */
export function ruleOnHoleScore({ returned, actual, reason, isBeforeClose }: ReturnedScore): HoleScoreRuling {
  if (returned === null) return { code: 'disqualified' }
  if (returned >= actual) return { code: 'stands', score: returned }
  switch (reason) {
    case 'unknown-penalty-stroke':
      return isBeforeClose ? { code: 'committee-adds-penalty', score: actual } : { code: 'stands', score: returned }
    case 'told-or-unsure-of-penalty':
    case 'other':
      return { code: 'disqualified' }
    default:
      return unreachable(reason)
  }
}
