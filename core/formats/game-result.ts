import type { CountbackHoles, CountbackMethod } from '#core/card/countback-methods.ts'
import type { HoleKey } from '#core/card/score.ts'
import type { Fraction } from '#core/values/fraction.ts'
import type { BallId, GameId, PlayerId } from '#core/values/ids.ts'
import type { FormatName } from './format-names.ts'
import type { TieEnd } from './game-methods.ts'
import type { MatchState } from './match-state.ts'
import type { MeasureUnit } from './parts.ts'
import type { PartsResult } from './parts-result.ts'
import type { PlayOff } from './play-off.ts'
import type { SharesResult } from './shares-result.ts'

/** Why a game cannot be computed yet; `ball` where one ball is the reason. */
export const gameGaps = [
  'no format',
  'no sides',
  'wrong sides',
  'setting missing',
  'course incomplete',
  'handicap missing',
  'tee missing',
  'rating missing',
] as const
export interface GameGap {
  readonly code: (typeof gameGaps)[number]
  readonly ball: BallId | null
  /** The missing setting, or empty. */
  readonly setting: string
}

/** The strokes a ball has in one game, and where they fall. */
export interface BallStrokes {
  /** Unrounded; null with plain strokes. */
  readonly courseHandicap: Fraction | null
  readonly playingHandicap: number
  /** In this game: the playing handicap, or the strokes given in a match. */
  readonly strokes: number
  /** Of them, those that a tee of another par adds; negative below the field's baseline. */
  readonly forTeePar: number
  /** Every hole of the order of play, extra holes too; negative gives back. */
  readonly byHole: ReadonlyMap<HoleKey, number>
}

/**
 * What a side has on a hole: a value in the game's unit, with the strokes that would make it level and the balls that
 * give it; `none` where the ball was picked up or not played; `out` where the hole is out of play and counts nothing;
 * `open` where nothing is written; `two` where two scores wait for a choice, with what each would make of it.
 */
export type SideHole =
  | { readonly kind: 'value'; readonly value: number; readonly level: number; readonly balls: readonly BallId[] }
  | { readonly kind: 'none' }
  | { readonly kind: 'out' }
  | { readonly kind: 'open' }
  | { readonly kind: 'two'; readonly values: readonly (number | null)[] }

/** Why a hole counts as it does, where its score alone does not say. */
export const holeNoteCodes = [
  'picked-up',
  'not-played',
  'blank',
  'absent',
  'disqualified',
  'penalty',
  'capped',
  'net-par',
  'out-of-play',
  'short',
] as const
export type HoleNoteCode = (typeof holeNoteCodes)[number]
export interface HoleNote {
  readonly code: HoleNoteCode
  /** Null where it is said of the side: out of play, fewer balls holed than count. */
  readonly ball: BallId | null
}

/** How many drives of a player one ball of several used. */
export interface DrivesUsed {
  readonly ball: BallId
  readonly player: PlayerId
  readonly count: number
}

export interface TotalLine {
  readonly side: readonly BallId[]
  readonly byHole: ReadonlyMap<HoleKey, SideHole>
  /** Of the settled holes; null in stroke play once there is no return. */
  readonly total: number | null
  /** Strokes over par of the holes counted, net in a net game; null with points and holes, and with no return. */
  readonly overPar: number | null
  /** Holes that something is written for. */
  readonly through: number
  readonly isFinished: boolean
  /** Holes with two scores. */
  readonly unsettled: readonly HoleKey[]
  /** A hole picked up or not played in stroke play. */
  readonly isNoReturn: boolean
  /** Of the settled holes and the total: strokes added, or points or holes taken off (negative), for the round. */
  readonly penalty: number
  /** By hole, where there is anything to say. */
  readonly notes: ReadonlyMap<HoleKey, readonly HoleNote[]>
  /** Every ball of the side. */
  readonly withdrawn: { readonly reason: string | null } | null
  /** The side, from this game. */
  readonly disqualified: { readonly reason: string | null } | null
  /** What the ghost of a short team plays off; null where it has none. */
  readonly ghost: number | null
  /** The ball whose card was drawn for a short team. */
  readonly drawnCard: BallId | null
  /** Of the balls for which somebody noted whose drive was used. */
  readonly drives: readonly DrivesUsed[]
  /** From 1; equal lines share it. Null for no return, a side disqualified and before a hole is played. */
  readonly place: number | null
  readonly isTied: boolean
}

/** Finished lines with one total, counted back. */
export interface Tie {
  /** In order after the countback. */
  readonly sides: readonly (readonly BallId[])[]
  /** What was counted: the method of the game's terms, or the one that its scores leave. */
  readonly method: CountbackMethod
  readonly holes: CountbackHoles
  /** Up to the last step that was needed, each with the sides' figures in that order. */
  readonly working: readonly { readonly name: string; readonly figures: readonly Fraction[] }[]
  /** The step that puts each side before the next, `play-off` for one of those; null where they are tied still. */
  readonly decidedBy: readonly (string | null)[]
  /** Over extra holes, of sides that no step separated; in the order after it. */
  readonly playOffs: readonly PlayOff[]
  /** What the terms say then; null where every side has a place of its own. */
  readonly ifStillTied: TieEnd | null
}

/** A hole of a match from the first side's view; null while open, `two` while two scores leave it open. */
export type MatchHoleResult = 1 | 0 | -1 | null | { readonly two: readonly (1 | 0 | -1)[] }

export type MatchSides = readonly [readonly BallId[], readonly BallId[]]

/** Why a hole of a match went as it did. */
export const matchHoleReasons = [
  'lower',
  'level',
  'only-holed',
  'none-holed',
  'conceded',
  'agreed',
  'penalty',
  'out-of-play',
] as const
export type MatchHoleReason = (typeof matchHoleReasons)[number]

export interface MatchHoleLine {
  readonly key: HoleKey
  readonly values: readonly [SideHole, SideHole]
  /** Null with the reason `out-of-play` is a hole that the match does not have. */
  readonly result: MatchHoleResult
  /** Null while open. */
  readonly reason: MatchHoleReason | null
  /** Whose scores, concession or penalty made it. */
  readonly balls: readonly BallId[]
}

export const matchEndings = ['play', 'agreed', 'conceded', 'disqualified'] as const
export type MatchEnding = (typeof matchEndings)[number]

/** A concession that has no effect. */
export const voidReasons = ['hole-already-decided', 'agreed-otherwise'] as const
export interface VoidConcession {
  readonly hole: HoleKey
  readonly by: BallId
  readonly reason: (typeof voidReasons)[number]
}

export interface MatchLine {
  readonly sides: MatchSides
  /** In the group's order of play; extra holes as far as the match went on them. */
  readonly holes: readonly MatchHoleLine[]
  /** Of this match: three balls may have another difference in each. */
  readonly strokes: ReadonlyMap<BallId, BallStrokes>
  readonly state: MatchState
  /** Null while the match is open. */
  readonly decidedBy: MatchEnding | null
  /** Holes with two scores, or told in two ways. */
  readonly unsettled: readonly HoleKey[]
  readonly voids: readonly VoidConcession[]
}

/** One format over an outing's scores, computed from its settings and nothing else. */
export type GameResult =
  | {
      readonly kind: 'gap'
      readonly game: GameId
      readonly format: FormatName | null
      readonly gaps: readonly GameGap[]
    }
  | {
      readonly kind: 'total'
      readonly game: GameId
      readonly format: FormatName
      readonly unit: MeasureUnit
      readonly strokes: ReadonlyMap<BallId, BallStrokes>
      /** In order of place. */
      readonly lines: readonly TotalLine[]
      /** Of the lines with a place, in its order; empty without terms. */
      readonly ties: readonly Tie[]
      /** Balls whose sides have no line yet, and why. */
      readonly gaps: readonly GameGap[]
    }
  | {
      readonly kind: 'match'
      readonly game: GameId
      readonly format: FormatName
      readonly strokes: ReadonlyMap<BallId, BallStrokes>
      readonly matches: readonly MatchLine[]
    }
  | ({
      readonly kind: 'shares'
      readonly game: GameId
      readonly format: FormatName
      readonly strokes: ReadonlyMap<BallId, BallStrokes>
      /** Balls whose sides are left out, and why. */
      readonly gaps: readonly GameGap[]
    } & SharesResult)
  | ({
      readonly kind: 'parts'
      readonly game: GameId
      readonly format: FormatName
      readonly strokes: ReadonlyMap<BallId, BallStrokes>
    } & PartsResult)
