import type { HoleKey } from '#core/card/score.ts'
import type { AcceptedAs, HandicapEdition } from '#core/handicap/acceptable-holes.ts'
import type { NotPlayedMethod } from '#core/handicap/adjusted-gross.ts'
import type { PlayingConditions } from '#core/handicap/playing-conditions.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { BallId, PlayerId } from '#core/values/ids.ts'

/** Why a figure for handicapping is not there, `hole` where one hole is the reason. */
export const handicappingGaps = [
  'several players',
  'not under the rules',
  'course incomplete',
  'handicap missing',
  'tee missing',
  'rating missing',
  'setting missing',
  'two scores',
  'nothing written',
  'too few holes',
  'expected score not public',
] as const
export type HandicappingGap = {
  readonly code: (typeof handicappingGaps)[number]
  readonly hole: HoleKey | null
}

/** The full Course Handicap, whole; `none` before an Index. */
export type CourseHandicapFound =
  | { readonly kind: 'known'; readonly strokes: number }
  | { readonly kind: 'none' }
  | { readonly kind: 'gap'; readonly code: HandicappingGap['code'] }

/** A hole as it counts for handicapping. */
export interface HandicappingHole {
  readonly key: HoleKey
  readonly par: number
  readonly index: number
  /** Received off the full Course Handicap; null while nobody knows it. */
  readonly strokes: number | null
  /** The most that the hole counts. */
  readonly most: number | null
  /** What the ball did, or the most likely score: `started` where it was picked up and nobody says. */
  readonly score: number | 'started' | 'not-played' | null
}

/** Of nine holes it is never rounded: two are added first, or an expected score. */
export type Differential =
  | { readonly holes: 18; readonly unrounded: Fraction; readonly tenths: number }
  | { readonly holes: 9; readonly unrounded: Fraction; readonly tenths: null }

/** The adjusted gross score by one of the methods for holes not played. */
export interface AdjustedScore {
  readonly notPlayed: NotPlayedMethod
  readonly counted: readonly (number | null)[]
  readonly total: number
  readonly holesLeftOut: number
  readonly differential: Differential | null
}

/** A ball's score for handicapping. Never an official figure: that comes from an authorised association. */
export interface BallHandicapping {
  readonly ball: BallId
  /** Null where several players play the ball. */
  readonly player: PlayerId | null
  readonly unofficial: true
  /** Full and whole; null before an Index, or while nobody knows it: `gaps` say so. */
  readonly courseHandicap: number | null
  readonly holesPlayed: number
  /** By edition of the Rules of Handicapping. */
  readonly acceptedAs: Readonly<Record<HandicapEdition, AcceptedAs>>
  /** Given; what the sums use where nobody has given one is 0. */
  readonly playingConditions: { readonly given: PlayingConditions | null; readonly used: PlayingConditions }
  readonly holes: readonly HandicappingHole[]
  /** Each method is right where it is in force; empty while the score is not whole. */
  readonly scores: readonly AdjustedScore[]
  readonly gaps: readonly HandicappingGap[]
}
