import type { Card, LateScore, StrayScore } from '#core/card/card.ts'
import type { PlayedHole } from '#core/card/score.ts'
import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import type { Standing } from '#core/log/fold.ts'
import type { BallId, DeviceId, GameId, GroupId, InviteId, PlayerId, TeeId } from '#core/values/ids.ts'
import type { CourseHole, FactValues, Grant, Handicap, KeyParts, Place, Tee } from './facts.ts'
import type { Notes } from './notes.ts'
import type { HoleSketch } from './sketch.ts'

/** What an outing's facts mean: one reading of the log's state, made new from it and never stored. */
export interface Outing {
  readonly title: string | null
  /** "2026-05-16" */
  readonly day: string | null
  readonly length: 9 | 18
  /** Played under the Rules; true unless the facts say otherwise. */
  readonly rules: boolean
  readonly courseName: string | null
  /** By hole number; a hole that nobody has typed in is missing. */
  readonly holes: ReadonlyMap<number, CourseHole>
  readonly tees: ReadonlyMap<TeeId, Tee>
  /** By hole number; a hole of which nothing is drawn is missing. */
  readonly sketches: ReadonlyMap<number, HoleSketch>
  readonly players: ReadonlyMap<PlayerId, Player>
  readonly balls: ReadonlyMap<BallId, Ball>
  readonly groups: ReadonlyMap<GroupId, Group>
  /** In order of their ids. */
  readonly games: readonly Game[]
  /** The main game as the facts name it; null when they do not. */
  readonly namedMain: GameId | null
  /** The game whose strokes make the level, another group's own game never its; null when there is no game. */
  readonly main: GameId | null
  readonly cards: ReadonlyMap<BallId, Card>
  readonly notes: Notes
  readonly phones: ReadonlyMap<DeviceId, Phone>
  readonly invites: ReadonlyMap<InviteId, Invite>
  /** Facts other than scores with two values; play goes on with the last of them. */
  readonly doubts: readonly Doubt[]
  readonly late: readonly LateScoreOfBall[]
  readonly lateFacts: readonly LateFact[]
  readonly stray: readonly (StrayScore & { readonly ball: BallId })[]
  /** Keys that this version does not understand: kept and passed on, left out of every sum. */
  readonly newer: readonly string[]
}

export type LateScoreOfBall = LateScore & { readonly ball: BallId }

export interface LateFact {
  readonly key: string
  readonly standing: Standing
  readonly closed: FactValues['closeGroup']['facts'][number][1]
}

export interface Player {
  readonly id: PlayerId
  readonly name: string
  readonly handicap: Handicap | null
  readonly tee: TeeId | null
}

export interface Ball {
  readonly id: BallId
  readonly players: readonly PlayerId[]
  /** The players' names, joined as a side is read: "Alder & Cedar". */
  readonly name: string
  readonly group: GroupId | null
  readonly position: number
  /** After a move: the holes that another group speaks for. */
  readonly elsewhere: Place['elsewhere']
}

export interface Group {
  readonly id: GroupId
  readonly name: string
  /** The scheduled holes in order of play, 1 to `length` when nobody has said otherwise. */
  readonly round: readonly PlayedHole[]
  readonly extra: readonly PlayedHole[]
  /** In order of position. */
  readonly balls: readonly BallId[]
}

/** A game with every setting its format asks for, or what it still lacks. Nothing is filled in by the fold. */
export interface Game {
  readonly id: GameId
  /** The group whose own game it is; null for a game of the whole outing. */
  readonly group: GroupId | null
  readonly format: FormatName | null
  readonly sides: readonly (readonly BallId[])[] | null
  /** Null where it is played over the whole round. */
  readonly holes: FactValues['gameHoles'] | null
  readonly methods: GameMethods
}

/** What lets phones in; once void no phone comes in by it, and those that came stay in. */
export interface Invite extends Grant {
  readonly isVoid: boolean
}

export interface Phone extends Grant {
  /** The invite that it came by; null for the phone that started the outing. */
  readonly invite: InviteId | null
  readonly isVoid: boolean
}

export interface Doubt {
  readonly key: string
  readonly parts: KeyParts
  /** Ascending: the last is the one play goes on with. */
  readonly standings: readonly Standing[]
}
