import type { FormatName } from '#core/formats/format-names.ts'
import type { GameMethods } from '#core/formats/game-methods.ts'
import type {
  GameGap,
  HoleNoteCode,
  MatchEnding,
  MatchHoleReason,
  SideHole,
  Tie,
  TotalLine,
  VoidConcession,
} from '#core/formats/game-result.ts'
import type { MatchSide } from '#core/formats/match-state.ts'
import type { MeasureUnit } from '#core/formats/parts.ts'
import type { SettledParts, SettledShares } from './settle-output-parts.ts'

export interface SettledHole {
  readonly hole: number
  readonly lap: number
}

export interface SettledCourseHandicap {
  /** Unrounded, decimal text of at most six places. */
  readonly unrounded: string
  readonly rounded: number
}

export interface SettledGap {
  readonly code: GameGap['code']
  readonly ball: string | null
  /** The missing setting, or empty. */
  readonly setting: string
}

export interface SettledGameHead {
  readonly id: string
  readonly group: string | null
  readonly format: FormatName | null
  readonly sides: readonly (readonly string[])[] | null
  /** The first and the last hole of a game that is not played over the whole round. */
  readonly over: { readonly from: SettledHole | null; readonly to: SettledHole | null } | null
  readonly settings: Omit<GameMethods, 'allowancePercent'> & { readonly allowance: number | null }
}

export interface SettledStrokes {
  readonly ball: string
  readonly courseHandicap: SettledCourseHandicap | null
  readonly playingHandicap: number
  readonly strokes: number
  /** Of them, those for the par of the tee. */
  readonly forTeePar: number
  readonly byHole: readonly (SettledHole & { readonly strokes: number })[]
}

/** `kind` as in the game: a value, none, out of play, open, or two with what each choice would give. */
export interface SettledSideHole {
  readonly kind: SideHole['kind']
  readonly value: number | null
  readonly values: readonly (number | null)[]
  /** The balls that give the value. */
  readonly balls: readonly string[]
}

/** Of the side where no ball is named. */
export interface SettledNote {
  readonly code: HoleNoteCode
  readonly ball: string | null
}

export interface SettledLine {
  readonly side: readonly string[]
  readonly names: readonly string[]
  readonly place: number | null
  readonly isTied: boolean
  readonly total: number | null
  readonly overPar: number | null
  readonly through: number
  readonly isFinished: boolean
  readonly isNoReturn: boolean
  /** For the round, in the total already. */
  readonly penalty: number
  readonly withdrawn: TotalLine['withdrawn']
  readonly disqualified: TotalLine['disqualified']
  /** What the ghost of a short team plays off. */
  readonly ghost: number | null
  /** The ball whose card was drawn for a short team. */
  readonly drawnCard: string | null
  readonly drives: readonly { readonly ball: string; readonly player: string; readonly count: number }[]
  /** `notes`: why the hole counts as it does. */
  readonly holes: readonly (SettledHole & SettledSideHole & { readonly notes: readonly SettledNote[] })[]
  readonly unsettled: readonly SettledHole[]
}

/** `working`: each figure as decimal text of at most six places, in the order of the sides. */
export interface SettledTie {
  readonly sides: readonly (readonly string[])[]
  readonly method: Tie['method']
  readonly holes: Tie['holes']
  readonly decidedBy: readonly (string | null)[]
  /** Over extra holes, of sides that the countback left tied; in the order after it. */
  readonly playOffs: readonly {
    readonly sides: readonly (readonly string[])[]
    readonly holes: readonly SettledHole[]
    readonly figures: readonly number[]
  }[]
  readonly ifStillTied: Tie['ifStillTied']
  readonly working: readonly { readonly name: string; readonly figures: readonly string[] }[]
}

export interface SettledMatchHole extends SettledHole {
  /** From the first side's view; null while open. */
  readonly result: 1 | 0 | -1 | null
  /** What each choice between two scores would make of it. */
  readonly outcomes: readonly (1 | 0 | -1)[]
  /** Null while open; a hole out of play without a result is not part of the match. */
  readonly reason: MatchHoleReason | null
  /** The balls whose scores, concession or penalty made it. */
  readonly by: readonly string[]
  readonly values: readonly SettledSideHole[]
}

export interface SettledMatch {
  readonly sides: readonly (readonly string[])[]
  readonly names: readonly (readonly string[])[]
  /** "2 up", "3 & 2", "all square", "halved". */
  readonly text: string
  /** "2 up, 4 to play", "dormie 2", "won 3 & 2", "won at the 19th". */
  readonly line: string
  /** A is the first side. */
  readonly leader: MatchSide | null
  readonly winner: MatchSide | null
  readonly lead: number
  readonly holesPlayed: number
  readonly toPlay: number
  /** Holes not known although a later one is. */
  readonly gaps: number
  readonly isDormie: boolean
  readonly isFinished: boolean
  readonly decidedBy: MatchEnding | null
  /** Given in this match. */
  readonly strokes: readonly { readonly ball: string; readonly strokes: number }[]
  /** Extra holes too, as far as the match went on them. */
  readonly holes: readonly SettledMatchHole[]
  readonly unsettled: readonly SettledHole[]
  /** Concessions without effect. */
  readonly voids: readonly (SettledHole & { readonly by: string; readonly reason: VoidConcession['reason'] })[]
}

export type SettledGame =
  | (SettledGameHead & { readonly kind: 'gap'; readonly gaps: readonly SettledGap[] })
  | (SettledGameHead & {
      readonly kind: 'total'
      readonly unit: MeasureUnit
      readonly strokes: readonly SettledStrokes[]
      readonly lines: readonly SettledLine[]
      readonly ties: readonly SettledTie[]
      /** Balls whose sides have no line yet, and why. */
      readonly gaps: readonly SettledGap[]
    })
  | (SettledGameHead & {
      readonly kind: 'match'
      readonly strokes: readonly SettledStrokes[]
      readonly matches: readonly SettledMatch[]
    })
  | (SettledGameHead & {
      readonly kind: 'shares'
      readonly strokes: readonly SettledStrokes[]
      /** Balls whose sides are left out, and why. */
      readonly gaps: readonly SettledGap[]
    } & SettledShares)
  | (SettledGameHead & { readonly kind: 'parts'; readonly strokes: readonly SettledStrokes[] } & SettledParts)
