import type { ScoreRecord } from '#core/card/card.ts'
import type { HoleScore } from '#core/card/score.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import type { HoleOutMethod } from '#core/formats/happenings.ts'
import type { CourseHandicapMethod, HalfIndexMethod } from '#core/handicap/course-handicap.ts'
import type { MatchStrokesMethod } from '#core/handicap/match-strokes.ts'
import type { PlayingConditions } from '#core/handicap/playing-conditions.ts'
import type { AllowanceRounding } from '#core/handicap/playing-handicap.ts'
import type {
  BallId,
  DeviceId,
  GameId,
  GroupId,
  InviteId,
  PlayerId,
  RulingId,
  ShapeId,
  TeeId,
} from '#core/values/ids.ts'
import type { Json } from '#core/values/json.ts'
import type { GreenSketch, ShapeSketch } from './sketch.ts'

/** Whose writing a score is: the group's card, the player's marker, or the desk. */

/** Who certifies a card. */
export const certifiers = ['player', 'marker'] as const
export type Certifier = (typeof certifiers)[number]

export const roles = ['desk', 'scorer', 'viewer', 'owner'] as const
export type Role = (typeof roles)[number]

export interface CourseHole {
  readonly par: number
  /** The stroke index; two holes with the same one are a misprint and do no harm. */
  readonly index: number
}

/** Ratings of a set of holes from one tee. `courseRatingTenths` 714 is 71.4. */
export interface TeeRatings {
  readonly courseRatingTenths: number
  readonly slope: number
  readonly par: number
}

export interface Tee {
  readonly name: string
  /** Of eighteen holes, of 1 to 9, of 10 to 18; null where nobody has typed it in. */
  readonly ratings: TeeRatings | null
  readonly frontRatings: TeeRatings | null
  readonly backRatings: TeeRatings | null
  /** By hole from 1, where this tee differs from the course; null for the course's own. */
  readonly pars: readonly number[] | null
  readonly indexes: readonly number[] | null
  readonly lengths: { readonly unit: 'yards' | 'metres'; readonly byHole: readonly number[] } | null
}

/** What a group has of a player: an index, a course handicap read off the board, or plain strokes for every game. */
export type Handicap =
  /** Handicap Index in tenths, a plus index negative: 124 is 12.4, -13 is +1.3. */
  | { readonly kind: 'index'; readonly tenths: number }
  | { readonly kind: 'course-handicap'; readonly strokes: number }
  | { readonly kind: 'plain-strokes'; readonly strokes: number }

export interface Place {
  readonly group: GroupId
  /** Place in the group, from 1. */
  readonly position: number
  /** After a move: the holes that count from another group's writing. */
  readonly elsewhere: readonly { readonly group: GroupId; readonly holes: readonly HoleAndLap[] }[]
}

/** Who won a hole or a match between two sides, each named by a ball of it; null for a half. */
export interface AgreedBetween {
  readonly between: readonly [BallId, BallId]
  readonly won: BallId | null
}

/** What the committee found, for every game of the outing or those it names. */
export type Ruling = {
  readonly games: readonly GameId[] | null
  /** The rule as it is cited, "Rules of Golf 3.3b(3)". */
  readonly rule: string | null
  readonly reason: string | null
} & (
  | { readonly kind: 'no-penalty'; readonly ball: BallId | null }
  /** On one hole, or on the round; in a match `holeLost` counts in place of strokes. */
  | {
      readonly kind: 'penalty'
      readonly ball: BallId
      readonly hole: HoleAndLap | null
      readonly strokes: number
      readonly holeLost: boolean
    }
  /** From the whole game, or from one hole of it. */
  | { readonly kind: 'disqualified'; readonly ball: BallId; readonly hole: HoleAndLap | null }
  /** A handicap declared too low in a match is what the ball plays off. */
  | { readonly kind: 'plays-off'; readonly ball: BallId; readonly strokes: number }
  /** A handicap on the card that stands although it is too low: the net score is off it. */
  | { readonly kind: 'net-off'; readonly ball: BallId; readonly strokes: number }
)

export type HoleAndLap = readonly [hole: number, lap: number]
export type ClosedScore = readonly [hole: number, lap: number, score: HoleScore]

/** Who a phone or an invite may be. Secrets never stand in a fact, only their SHA-256 in hex. */
export interface Grant {
  readonly hash: string
  readonly role: Role
  /** The group of a scorer; null for every other role. */
  readonly group: GroupId | null
  readonly label: string
}

/** Every kind of fact of an outing, with the shape of its value. The keys are in `keys.ts`. */
export interface FactValues {
  readonly title: string
  /** The day of play at the course, "2026-05-16". */
  readonly day: string
  /** Scheduled holes. */
  readonly length: 9 | 18
  /** Played under the Rules: a score is to count. */
  readonly rules: boolean
  readonly course: { readonly name: string }
  readonly hole: CourseHole
  readonly tee: Tee
  /** The sketch of a hole: its green, and each shape by itself, so that two people can each put one in. */
  readonly green: GreenSketch
  readonly shape: ShapeSketch
  readonly player: { readonly name: string }
  readonly handicap: Handicap
  readonly playerTee: TeeId
  /** One player, or several who play one ball. */
  readonly ball: { readonly players: readonly PlayerId[] }
  readonly place: Place
  readonly group: { readonly name: string }
  /** The order of play: `length` holes, then any extra holes. */
  readonly order: readonly HoleAndLap[]
  readonly score: HoleScore
  /** The game whose strokes make the level of the strip. */
  readonly main: GameId
  readonly gameFormat: FormatName
  /** Sides of balls, in the order they are shown. */
  readonly gameSides: readonly (readonly BallId[])[]
  /** The holes a game is played over, in order of play; null from the first, and to the last with any extra hole. */
  readonly gameHoles: { readonly from: HoleAndLap | null; readonly to: HoleAndLap | null }
  readonly gameAllowance: number
  readonly gameRounding: AllowanceRounding
  readonly gameCourseHandicap: CourseHandicapMethod
  readonly gameNineHoleIndex: HalfIndexMethod
  readonly gameMatchStrokes: MatchStrokesMethod
  readonly gameSideStrokes: NonNullable<GameMethods['sideStrokes']>
  readonly gameHandicapShares: NonNullable<GameMethods['handicapShares']>
  readonly gameMixedTees: NonNullable<GameMethods['mixedTees']>
  readonly gameCountingBalls: NonNullable<GameMethods['countingBalls']>
  readonly gameShortTeam: NonNullable<GameMethods['shortTeam']>
  readonly gameDrawnCard: BallId
  readonly gameMaximumScore: NonNullable<GameMethods['maximumScore']>
  readonly gameSkins: NonNullable<GameMethods['skins']>
  readonly gameSkinsLeft: NonNullable<GameMethods['skinsLeft']>
  readonly gamePresses: NonNullable<GameMethods['presses']>
  readonly gameTies: NonNullable<GameMethods['ties']>
  /** A ball's score with its next stroke conceded, in one match. */
  readonly concededStroke: number
  /** To the side of a ball, null where the match has two sides alone. A concession cannot be withdrawn by its sides. */
  readonly concededHole: { readonly to: BallId | null }
  readonly concededMatch: { readonly to: BallId | null }
  readonly agreedHole: { readonly results: readonly AgreedBetween[] }
  readonly agreedResult: {
    readonly results: readonly (AgreedBetween & { readonly by: number; readonly left: number })[]
  }
  /** The side that opens a new match inside a part, from the key's hole on. */
  readonly press: { readonly by: BallId }
  readonly holeOut: { readonly counts: HoleOutMethod; readonly reason: string | null }
  /** Whose drive a ball of several players used. */
  readonly drive: PlayerId
  /** The partner of a foursomes ball who tees off on the key's hole; from there the two take turns. */
  readonly teeShot: PlayerId
  /** Most likely score of a ball picked up, in strokes; for handicapping alone. */
  readonly likelyScore: number
  readonly absence: {
    readonly joinedAt: HoleAndLap | null
    readonly leftAt: HoleAndLap | null
    readonly isWithdrawn: boolean
    readonly reason: string | null
  }
  /** Who keeps the marker's record of a ball. */
  readonly marker: PlayerId
  /** The values that player or marker stand by, hole by hole; it stands while the settled values are those. */
  readonly certifiedByPlayer: { readonly scores: readonly ClosedScore[] }
  readonly certifiedByMarker: { readonly scores: readonly ClosedScore[] }
  readonly ruling: Ruling
  /** Of the day, in strokes over eighteen holes: what the association gave, never worked out. */
  readonly playingConditions: { readonly strokes: PlayingConditions; readonly reason: string | null }
  /** A ball's close: the values it closes with. Withdrawn to open it again. */
  readonly closeBall: { readonly scores: readonly ClosedScore[] }
  /** The close of the rest of a group's facts, by key. */
  readonly closeGroup: { readonly facts: readonly (readonly [key: string, value: Json])[] }
  readonly invite: Grant
  /** A phone's own key, with the invite it came by; null for the phone that started the log. */
  readonly key: Grant & { readonly invite: InviteId | null }
  readonly voidKey: true
  readonly voidInvite: true
}

export type FactKind = keyof FactValues

/** A key taken apart: its kind and the ids in it. */
export interface KeyParts {
  readonly kind: FactKind
  readonly group: GroupId | null
  readonly player: PlayerId | null
  readonly ball: BallId | null
  readonly game: GameId | null
  readonly tee: TeeId | null
  readonly invite: InviteId | null
  readonly device: DeviceId | null
  readonly ruling: RulingId | null
  readonly shape: ShapeId | null
  readonly hole: number | null
  readonly lap: number | null
  readonly record: ScoreRecord | null
}
