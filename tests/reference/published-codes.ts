import type { CountbackMethod } from '#core/card/countback-methods.ts'
import type { LowScoreReason } from '#core/card/rulings/hole-score.ts'
import type { StartForm } from '#core/formats/rulings/start-time.ts'
import type { UnfinishedSideRuling } from '#core/formats/rulings/unfinished-side.ts'
import type { AcceptedAs } from '#core/handicap/acceptable-holes.ts'
import type { PlayerAllowance, SideAllowance } from '#core/handicap/allowance.ts'
import type { TeeParForm } from '#core/handicap/tee-par.ts'

/** The words of the file of check values for what core calls by words of its own. Nothing else translates between them. */

export const allowanceCodes: Readonly<Record<string, PlayerAllowance>> = {
  'stroke individual': 'individual-stroke-play',
  'stroke individual_stableford': 'individual-stableford',
  'stroke individual_par_bogey': 'individual-par-bogey',
  'stroke individual_maximum_score': 'individual-maximum-score',
  'stroke four_ball': 'four-ball-stroke-play',
  'stroke four_ball_stableford': 'four-ball-stableford',
  'stroke four_ball_par_bogey': 'four-ball-par-bogey',
  'stroke best_1_of_4': 'best-1-of-4',
  'stroke best_2_of_4': 'best-2-of-4',
  'stroke best_3_of_4': 'best-3-of-4',
  'stroke all_4_of_4': 'all-4-of-4',
  'stroke best_1_of_4_par_bogey': 'best-1-of-4-par-bogey',
  'stroke best_2_of_4_par_bogey': 'best-2-of-4-par-bogey',
  'stroke best_3_of_4_par_bogey': 'best-3-of-4-par-bogey',
  'stroke all_4_of_4_par_bogey': 'all-4-of-4-par-bogey',
  'match individual': 'individual-match',
  'match four_ball': 'four-ball-match',
  'match total_score_of_2': 'total-of-2-match',
}

export const sideAllowanceCodes: Readonly<Record<string, SideAllowance>> = {
  foursomes: 'foursomes',
  greensomes: 'greensomes',
  pinehurst_chapman: 'chapman',
  scramble_2: 'scramble-of-2',
  scramble_3: 'scramble-of-3',
  scramble_4: 'scramble-of-4',
}

export const teeParCodes = {
  stroke_play: 'stroke-play',
  maximum_score: 'maximum-score',
  stableford: 'stableford',
} as const satisfies Record<string, TeeParForm>

export const acceptedAsCodes: Record<AcceptedAs, string> = {
  'eighteen-hole-score': '18-hole',
  'nine-hole-score': '9-hole',
  'not-acceptable': 'not_acceptable',
}

export const countbackMethodCodes = {
  gross: 'gross',
  fraction: 'share-of-handicap',
  index: 'strokes-as-they-fall',
  points: 'points',
} as const satisfies Record<string, CountbackMethod>

export const countbackStepCodes: Readonly<Record<string, string>> = {
  'last-9': 'last9',
  'last-6': 'last6',
  'last-3': 'last3',
  'last-hole': 'hole18',
  'first-nine-last-6': 'first9_last6',
  'first-nine-last-3': 'first9_last3',
  'first-nine-last-hole': 'hole9',
}

export const startFormCodes = {
  stroke: 'stroke-play',
  match: 'match',
  stableford: 'stableford',
} as const satisfies Record<string, StartForm>

export const lowScoreReasonCodes = {
  other: 'other',
  unknown_penalty_stroke: 'unknown-penalty-stroke',
  told_or_unsure_of_penalty: 'told-or-unsure-of-penalty',
} as const satisfies Record<string, LowScoreReason>

export const unfinishedSideCodes: Record<UnfinishedSideRuling, string> = {
  'loses-hole': 'loses_hole',
  'disqualified-unless-corrected': 'disqualified_unless_corrected',
}

export const rulingCodes = {
  'no-penalty': 'no_penalty',
  stands: 'stands',
  'general-penalty': 'general_penalty',
  'penalty-strokes': 'penalty_strokes',
  'committee-adds-penalty': 'committee_adds_penalty',
  disqualified: 'disqualified',
} as const
