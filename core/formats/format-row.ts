import type { TeeParForm } from '#core/handicap/tee-par.ts'
import type { ContestName } from './contest-names.ts'
import type { GameMethods, GameSetting } from './game-methods.ts'
import type { BallRule, Measure } from './parts.ts'

/** Both ends belong to it; null has no end. */
export interface Range {
  readonly min: number
  readonly max: number | null
}

/** How many sides a game has, how many balls each of them, and how many players each ball. */
export interface SideShape {
  readonly count: Range
  readonly balls: Range
  readonly players: Range
  /** One ball alone against a side of several. */
  readonly isOneAgainstSeveral?: true
  /** Who plays with whom and when hangs on the order in which the sides stand. */
  readonly isInOrder?: true
}

export const between = (min: number, max: number): Range => ({ min, max })
export const exactly = (n: number): Range => between(n, n)
export const atLeast = (min: number): Range => ({ min, max: null })

/** What a new game proposes, in whole per cent. */
export interface ProposedAllowance {
  readonly percent: number
  /** By the number of balls that count on every hole, from one; null where the format has no such number. */
  readonly byCount?: readonly number[]
  /** Of the partners of one ball, the lowest handicap first, for each number of players that a ball may have. */
  readonly shares: GameMethods['handicapShares']
  readonly source: string
}

/** A format: ball rule x measure x contest. Adding one is adding a row. */
export interface FormatRow {
  readonly ballRule: BallRule
  readonly measure: Measure
  readonly contest: ContestName
  /** Decides whether a difference in par between tees counts. */
  readonly recordedAs: TeeParForm
  readonly sides: SideShape
  readonly allowance: ProposedAllowance
  /** The methods that have to be set. */
  readonly settings: readonly GameSetting[]
  /** Partners play one ball in turn, and so tee off in turn. */
  readonly isInTurn?: true
  /** Methods that a new game proposes beside those of every format. */
  readonly proposes?: Partial<GameMethods>
}

/** The settings that a player's handicap goes through. */
export const handicapSettings: readonly GameSetting[] = ['allowancePercent', 'rounding', 'nineHoleIndex']
/** Where strokes are given from one to another. */
export const matchSettings: readonly GameSetting[] = [...handicapSettings, 'matchStrokes']
/** The settings that the handicaps of one ball's partners go through. */
export const shareSettings: readonly GameSetting[] = ['handicapShares', 'mixedTees', 'rounding', 'nineHoleIndex']

export const appendixC = 'Rules of Handicapping, Appendix C; R&A and USGA; 2024'

/** The whole handicap, where nothing is published. */
export const customary: ProposedAllowance = {
  percent: 100,
  shares: null,
  source: 'common practice; no body publishes one',
}
