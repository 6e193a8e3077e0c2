import type { CountbackHoles, CountbackMethod, CountbackScheme } from '#core/card/countback-methods.ts'
import type { CourseHandicapMethod, HalfIndexMethod } from '#core/handicap/course-handicap.ts'
import type { FoursomesMatchMethod } from '#core/handicap/foursomes-match-strokes.ts'
import type { MatchStrokesMethod } from '#core/handicap/match-strokes.ts'
import type { AllowanceRounding } from '#core/handicap/playing-handicap.ts'
import type { BallId } from '#core/values/ids.ts'
import type { ShortTeamMethod } from './ghost.ts'
import type { MaximumScore } from './maximum-score.ts'
import type { SkinsLeftMethod, SkinsMethod } from './skins-methods.ts'

/** How new matches open inside a part: never, when a side asks, or by themselves when the newest is two down. */
export const pressMethods = ['none', 'by-hand', 'at-two-down'] as const
export type PressMethod = (typeof pressMethods)[number]

/** How partners from different tees make one handicap: one tee's par for all, or each par and its difference. */
export const mixedTeesMethods = ['one-tee-par', 'par-difference-in-shares'] as const
export type MixedTeesMethod = (typeof mixedTeesMethods)[number]

/** What follows where no step of the countback separates the best; a play-off is off the card, or over extra holes of it. */
export const tieEnds = ['shared', 'lot', 'play-off', 'extra-holes'] as const
export type TieEnd = (typeof tieEnds)[number]

/** Which holes are counted; nine holes have a form of their own. */
export const tieSchemes = ['nine-six-three-one', 'threes-from-last'] as const satisfies readonly CountbackScheme[]

/** How ties are split. */
export interface TieTerms {
  readonly method: CountbackMethod
  readonly scheme: (typeof tieSchemes)[number]
  readonly holes: CountbackHoles
  readonly ifStillTied: TieEnd
}

/** The methods of a game, each by its name; null where nobody has set it. The fold fills in nothing. */
export interface GameMethods {
  readonly allowancePercent: number | null
  readonly rounding: AllowanceRounding | null
  /** Null in a game stored before there was a choice: it holds rating minus par, as every game did then. */
  readonly courseHandicap: CourseHandicapMethod | null
  readonly nineHoleIndex: HalfIndexMethod | null
  readonly matchStrokes: MatchStrokesMethod | null
  /** Two sides of one ball each: whether each side's handicap is whole before the two are compared. */
  readonly sideStrokes: FoursomesMatchMethod | null
  /** Of several players' one ball, per cent of each Course Handicap, the lowest first: a list for each number of players. */
  readonly handicapShares: readonly (readonly number[])[] | null
  readonly mixedTees: MixedTeesMethod | null
  /** How many balls of a side count, hole by hole in order of play and then again from the first: [2], [1, 2, 3]. */
  readonly countingBalls: readonly number[] | null
  /** Null in a game stored before there was a choice: the balls there are count, as they did then. */
  readonly shortTeam: ShortTeamMethod | null
  /** The ball whose card was drawn for short teams; null until one is. */
  readonly drawnCard: BallId | null
  readonly maximumScore: MaximumScore | null
  readonly skins: SkinsMethod | null
  /** Null in a game stored before there was a choice: what is left is nobody's, as it was then. */
  readonly skinsLeft: SkinsLeftMethod | null
  readonly presses: PressMethod | null
  /** Null where ties stand. */
  readonly ties: TieTerms | null
}

export type GameSetting = keyof GameMethods

/**
 * What a game without the setting is counted by, for ever: each came after games had been stored without it. Where a game
 * says the same it writes nothing, so that this version plays with a server of the one before.
 */
export const missingMeans = {
  courseHandicap: 'with-rating-minus-par',
  skinsLeft: 'unclaimed',
  shortTeam: 'those-there',
} as const satisfies Partial<GameMethods>

export const noMethods: GameMethods = {
  allowancePercent: null,
  rounding: null,
  courseHandicap: null,
  nineHoleIndex: null,
  matchStrokes: null,
  sideStrokes: null,
  handicapShares: null,
  mixedTees: null,
  countingBalls: null,
  shortTeam: null,
  drawnCard: null,
  maximumScore: null,
  skins: null,
  skinsLeft: null,
  presses: null,
  ties: null,
}
