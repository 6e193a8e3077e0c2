import type { ScoreRecord } from '#core/card/card.ts'
import type { HoleScore } from '#core/card/score.ts'
import type { StrokeIndexAdvice } from '#core/handicap/stroke-index-advice.ts'
import type { Json } from '#core/values/json.ts'
import type { Handicap } from './facts.ts'
import type { EveryPlainNote } from './plain-notes.ts'
import type {
  SettledAllowanceAdvice,
  SettledCertification,
  SettledCoverage,
  SettledHandicapping,
} from './settle-output-extras.ts'
import type { SettledCourseHandicap, SettledGame, SettledGap, SettledHole } from './settle-output-games.ts'

/** Every computed result of an outing as JSON. Later versions only add to it. */
export interface SettleOutput {
  readonly sixThrees: 'settled'
  readonly version: 1
  readonly outing: {
    readonly title: string | null
    readonly day: string | null
    readonly length: 9 | 18
    readonly rules: boolean
    /** The game whose strokes make the level. */
    readonly main: string | null
  }
  readonly course: {
    readonly name: string | null
    readonly holes: readonly { readonly hole: number; readonly par: number; readonly index: number }[]
    /** What the recommendations say of the stroke indexes; null where there are no eighteen. */
    readonly strokeIndexAdvice: StrokeIndexAdvice | null
    readonly tees: readonly {
      readonly id: string
      readonly name: string
      /** Of the tee's own indexes; null where it has the course's. */
      readonly strokeIndexAdvice: StrokeIndexAdvice | null
    }[]
  }
  readonly players: readonly SettledPlayer[]
  readonly groups: readonly SettledGroup[]
  readonly games: readonly SettledGame[]
  readonly cards: readonly SettledBall[]
  readonly twoScores: readonly (SettledHole & { readonly ball: string; readonly entries: readonly SettledEntry[] })[]
  readonly late: readonly (SettledEntry & SettledHole & { readonly ball: string; readonly closed: HoleScore | null })[]
  readonly stray: readonly (SettledEntry & SettledHole & { readonly ball: string; readonly group: string })[]
  /** Facts of closed groups that differ from what they closed with. */
  readonly lateFacts: readonly {
    readonly key: string
    readonly value: Json
    readonly op: string
    readonly closed: Json
  }[]
  /** Facts other than scores with two values, the last of which counts. */
  readonly doubts: readonly {
    readonly key: string
    readonly values: readonly { readonly value: Json; readonly op: string }[]
  }[]
  /** Keys of a newer version, left out of every sum. */
  readonly newer: readonly string[]
  /** What games lack, once more in one list. */
  readonly gaps: readonly (SettledGap & { readonly game: string })[]
  /** What was said beside field, games and scores. */
  readonly notes: EveryPlainNote
  /** Who tees off in foursomes, hole by hole in order of play; balls of whom nobody has said it are left out. */
  readonly teeShots: readonly {
    readonly ball: string
    readonly holes: readonly (SettledHole & { readonly player: string })[]
  }[]
  readonly certification: readonly SettledCertification[]
  readonly handicapping: readonly SettledHandicapping[]
  readonly allowanceAdvice: readonly SettledAllowanceAdvice[]
  readonly coverage: SettledCoverage
}

export interface SettledPlayer {
  readonly id: string
  readonly name: string
  readonly tee: string | null
  readonly handicap: Handicap | null
  readonly courseHandicap: SettledCourseHandicap | null
}

export interface SettledGroup {
  readonly id: string
  readonly name: string
  readonly balls: readonly string[]
  readonly order: readonly SettledHole[]
  readonly extra: readonly SettledHole[]
}

export interface SettledEntry {
  readonly score: HoleScore
  readonly record: ScoreRecord
  readonly key: string
  readonly op: string
  readonly device: string
  /** The phone's clock, milliseconds since 1970. */
  readonly at: number
}

export interface SettledCardHole extends SettledHole {
  /** False for an extra hole. */
  readonly isScheduled: boolean
  readonly kind: 'none' | 'one' | 'two'
  readonly score: HoleScore | null
  /** Both of two scores. */
  readonly scores: readonly HoleScore[]
  readonly par: number | null
  readonly level: number | null
}

export interface SettledThree {
  readonly number: number
  readonly holes: readonly SettledHole[]
  readonly par: number
  readonly level: number
  readonly overLevel: number | null
  readonly isClosed: boolean
}

export interface SettledBall {
  readonly ball: string
  readonly name: string
  readonly players: readonly string[]
  readonly group: string | null
  readonly isClosed: boolean
  /** In order of play, extra holes last. */
  readonly holes: readonly SettledCardHole[]
  readonly threes: readonly SettledThree[]
  readonly overLevel: number | null
}
