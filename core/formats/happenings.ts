import type { HoleKey } from '#core/card/score.ts'
import type { BallId, PlayerId } from '#core/values/ids.ts'

/** A side is named by any ball of it; `to` or `between` by one of each, null where the game has two sides alone. */
export interface StrokeConcession {
  /** The ball whose next stroke is conceded, and its score with that stroke, in this match alone. */
  readonly ball: BallId
  readonly hole: HoleKey
  readonly score: number
}

export interface HoleConcession {
  readonly by: BallId
  readonly to: BallId | null
  readonly hole: HoleKey
}

export interface MatchConcession {
  readonly by: BallId
  readonly to: BallId | null
}

/** What the sides agreed a hole to be, right or wrong: it stands over the scores. */
export interface AgreedHole {
  readonly hole: HoleKey
  readonly between: readonly [BallId, BallId]
  /** A ball of the side that won; null for a hole halved. */
  readonly won: BallId | null
}

/** What the sides agreed the whole match to be. `by` holes up with `left` to play; zero and zero for a half. */
export interface AgreedResult {
  readonly between: readonly [BallId, BallId]
  readonly won: BallId | null
  readonly by: number
  readonly left: number
}

/** A match opened inside a part by the side that is down. */
export interface Press {
  readonly by: BallId
  /** Its first hole. */
  readonly from: HoleKey
}

/** What a hole out of play counts: nothing to anybody, or net par to everybody. */
export const holeOutMethods = ['nothing', 'net-par'] as const
export type HoleOutMethod = (typeof holeOutMethods)[number]

export interface HoleOut {
  readonly counts: HoleOutMethod
  readonly reason: string | null
}

/** Holes that a ball takes no part in: before it came, after it left, or all of them (both null). */
export interface Absence {
  readonly ball: BallId
  /** The first hole it took part in; null where it was there from the start. */
  readonly joinedAt: HoleKey | null
  /** The first hole it took no part in any more; null where it stayed. */
  readonly leftAt: HoleKey | null
  readonly isWithdrawn: boolean
  readonly reason: string | null
}

/** Penalty strokes of a ruling: on a hole, or (null) on the round. In a match `holeLost` instead of strokes. */
export interface Penalty {
  readonly ball: BallId
  readonly hole: HoleKey | null
  readonly strokes: number
  readonly holeLost: boolean
  readonly reason: string | null
}

/** Out of the whole game, or of one hole of it where the Rules say so (a partner's ball on a hole). */
export interface Disqualification {
  readonly ball: BallId
  readonly hole: HoleKey | null
  readonly reason: string | null
}

/** Everything beside scores that bears on one game. */
export interface Happenings {
  readonly strokeConcessions: readonly StrokeConcession[]
  readonly holeConcessions: readonly HoleConcession[]
  readonly matchConcessions: readonly MatchConcession[]
  readonly agreedHoles: readonly AgreedHole[]
  readonly agreedResults: readonly AgreedResult[]
  readonly presses: readonly Press[]
  readonly holesOut: ReadonlyMap<HoleKey, HoleOut>
  /** Whose drive a ball of several players used. */
  readonly drives: ReadonlyMap<BallId, ReadonlyMap<HoleKey, PlayerId>>
  readonly absences: ReadonlyMap<BallId, Absence>
  readonly penalties: readonly Penalty[]
  readonly disqualified: readonly Disqualification[]
  /** Declared in a match, lower than right: what the player plays off. */
  readonly playsOff: ReadonlyMap<BallId, number>
  /** On a card, lower than right: what the net score is off, where everybody has their own strokes. */
  readonly netOff: ReadonlyMap<BallId, number>
}

export const noHappenings: Happenings = {
  strokeConcessions: [],
  holeConcessions: [],
  matchConcessions: [],
  agreedHoles: [],
  agreedResults: [],
  presses: [],
  holesOut: new Map(),
  drives: new Map(),
  absences: new Map(),
  penalties: [],
  disqualified: [],
  playsOff: new Map(),
  netOff: new Map(),
}
