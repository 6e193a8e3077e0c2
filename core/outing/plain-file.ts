import type { ScoreRecord } from '#core/card/card.ts'
import type { HoleScore } from '#core/card/score.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods, GameSetting } from '#core/formats/game-methods.ts'
import type { BallId, GameId, GroupId, PlayerId, TeeId } from '#core/values/ids.ts'
import type { CourseHole, HoleAndLap, Tee } from './facts.ts'
import type { PlainNotes } from './plain-notes.ts'
import type { GreenSketch, ShapeSketch } from './sketch.ts'

/**
 * The plain outing file: what a person writes by hand or another program exports. A field that may be left out says
 * what then holds.
 */
export interface PlainOuting extends PlainNotes {
  readonly sixThrees: 'outing'
  readonly version: 1
  readonly form: 'plain'
  readonly title?: string | undefined
  /** "2026-05-16" */
  readonly day?: string | undefined
  /** Scheduled holes. */
  readonly length: 9 | 18
  /** Played under the Rules; true when left out. */
  readonly rules?: boolean | undefined
  readonly course: PlainCourse
  readonly players: readonly PlainPlayer[]
  /** Each player's own ball, with the player's id, when left out. */
  readonly balls?: readonly { readonly id: BallId; readonly players: readonly PlayerId[] }[] | undefined
  readonly groups: readonly PlainGroup[]
  /** Holes of a ball that another group than its own played and wrote, before a move. */
  readonly moved?: readonly PlainMove[] | undefined
  readonly games?: readonly PlainGame[] | undefined
  /** The game whose strokes make the level. */
  readonly main?: GameId | undefined
  readonly scores?: readonly PlainScores[] | undefined
  /** Balls that the desk has closed, with the scores of this file. */
  readonly closed?: readonly BallId[] | undefined
}

export interface PlainCourse {
  readonly name?: string | undefined
  /** From hole 1, nine or eighteen. */
  readonly holes: readonly CourseHole[]
  readonly tees?: readonly PlainTee[] | undefined
  /** What lies on some of the holes; nothing needs it. */
  readonly sketches?: readonly PlainSketch[] | undefined
}

/** The sketch of one hole. */
export interface PlainSketch {
  readonly hole: number
  readonly green?: GreenSketch | undefined
  readonly shapes?: readonly ShapeSketch[] | undefined
}

/** `courseRating` in strokes to a tenth: 71.4. */
export interface PlainRatings {
  readonly courseRating: number
  readonly slope: number
  readonly par: number
}

export interface PlainTee {
  readonly id: TeeId
  readonly name: string
  readonly ratings?: PlainRatings | undefined
  readonly frontRatings?: PlainRatings | undefined
  readonly backRatings?: PlainRatings | undefined
  /** By hole, where this tee differs from the course. */
  readonly pars?: readonly number[] | undefined
  readonly indexes?: readonly number[] | undefined
  readonly lengths?: NonNullable<Tee['lengths']> | undefined
}

/** A Handicap Index to a tenth, 12.4 or "+1.3" for a plus player; a course handicap; or plain strokes. */
export type PlainHandicap =
  | { readonly index: number | string }
  | { readonly courseHandicap: number }
  | { readonly strokes: number }

export interface PlainPlayer {
  readonly id: PlayerId
  readonly name: string
  readonly tee?: TeeId | undefined
  readonly handicap?: PlainHandicap | undefined
}

export interface PlainGroup {
  readonly id: GroupId
  readonly name: string
  /** In order of position. */
  readonly balls: readonly BallId[]
  /** The hole it starts from, 1 when left out; the round goes on from there. */
  readonly start?: number | undefined
  /** The whole order of play, extra holes at the end, in place of `start`. */
  readonly order?: readonly HoleAndLap[] | undefined
}

export interface PlainMove {
  readonly ball: BallId
  readonly group: GroupId
  readonly holes: readonly HoleAndLap[]
}

type Named<K extends GameSetting> = GameMethods[K] | undefined

/** A setting left out is the one that a new game of the format proposes; null leaves it unset, as where ties stand. */
export interface PlainGame {
  readonly id: GameId
  readonly format: FormatName
  /** The group whose own game it is; a game of the whole outing when left out. */
  readonly group?: GroupId | undefined
  /** Of sixes the first plays with the second, then with the third, then with the fourth. */
  readonly sides: readonly (readonly BallId[])[]
  /** The first and the last hole, in order of play; the whole round when left out. */
  readonly from?: HoleAndLap | undefined
  readonly to?: HoleAndLap | undefined
  readonly allowance?: Named<'allowancePercent'>
  readonly rounding?: Named<'rounding'>
  readonly courseHandicap?: Named<'courseHandicap'>
  readonly nineHoleIndex?: Named<'nineHoleIndex'>
  readonly matchStrokes?: Named<'matchStrokes'>
  readonly sideStrokes?: Named<'sideStrokes'>
  readonly handicapShares?: Named<'handicapShares'>
  readonly mixedTees?: Named<'mixedTees'>
  readonly countingBalls?: Named<'countingBalls'>
  readonly shortTeam?: Named<'shortTeam'>
  readonly drawnCard?: Named<'drawnCard'>
  readonly maximumScore?: Named<'maximumScore'>
  readonly skins?: Named<'skins'>
  readonly skinsLeft?: Named<'skinsLeft'>
  readonly presses?: Named<'presses'>
  readonly ties?: Named<'ties'>
}

/** One record's scores of a ball, by hole of the course from 1; null is nothing written. */
export interface PlainScores {
  readonly ball: BallId
  /** The group that wrote them, the ball's own when left out. */
  readonly group?: GroupId | undefined
  /** `card` when left out. */
  readonly record?: ScoreRecord | undefined
  /** 1 when left out. */
  readonly lap?: number | undefined
  readonly holes: readonly (HoleScore | null)[]
}

/** The balls of a file: those it lists, or each player's own. */
export const ballsOfPlain = (file: PlainOuting): NonNullable<PlainOuting['balls']> =>
  file.balls ?? file.players.map(({ id }) => ({ id: id as string as BallId, players: [id] }))

/** The group that a ball plays in, or that plays it on a hole; null for a ball in none. */
export function groupOfBall(
  file: PlainOuting,
  ball: BallId,
  at?: readonly [hole: number, lap: number],
): GroupId | null {
  const moved = (file.moved ?? []).find(
    each => each.ball === ball && at !== undefined && each.holes.some(([hole, lap]) => hole === at[0] && lap === at[1]),
  )
  return moved?.group ?? file.groups.find(({ balls }) => balls.includes(ball))?.id ?? null
}

/** The group that a row of scores was written in; null for the desk's own and a ball in no group. */
export function groupOfScores(file: PlainOuting, row: PlainScores): GroupId | null {
  return row.group ?? groupOfBall(file, row.ball)
}
